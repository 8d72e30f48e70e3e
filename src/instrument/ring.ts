import { fairCurve } from "../geometry/fair/fair-curve.ts";
import { fairPath } from "../geometry/fair/fair-path.ts";
import { roundCorner } from "../geometry/fair/round-corner.ts";
import type { Path, PathPoint } from "../geometry/path.ts";
import type { Point } from "../geometry/point.ts";
import type { SpecEdge, SpecFace } from "../order/spec.ts";
import { step } from "../step/step.ts";
import type { Store } from "../step/store.ts";

/**
 * An outline made of a ring of edges, or the edge that can't be made and why. `edges` names for each of its segments the edge that it
 * belongs to; the rounding of a corner belongs to the edge that ends there.
 */
export type Ring =
  | { readonly kind: "ok"; readonly path: Path; readonly edges: readonly string[] }
  | { readonly kind: "no-curve" | "no-room" | "unfair"; readonly edge: string };

/** A fair curve through places, mm, as lines and arcs; none where there is none. */
const fairEdge = step("outline.fair-edge", 1, ({ places }: { readonly places: readonly Point[] }) =>
  fairThrough(places),
);

/** The fair edges of a face, each worked out once for all outlines and models whose edge runs through the same places. */
export function fairEdges(store: Store, face: SpecFace, curves: Curves): FairEdges {
  const through = face.edges.flatMap((edge, i) => {
    const [from, to] = [endOf(face.edges.at(i - 1)!, curves), endOf(edge, curves)];
    if (edge.through.length === 0 || from === undefined || to === undefined) return [];
    return [[edge.id, store.answer(fairEdge, { places: placesOf(edge, from, to) }).value] as const];
  });
  return Object.fromEntries(through);
}

/** Lines and arcs from one corner of a ring to the next, and the radius that its far end is rounded with. */
type Run = { readonly edge: string; readonly points: readonly PathPoint[]; readonly corner: number };

/** The edges of a face that run fair through places, by their id: as lines and arcs, or none where no fair curve passes. */
export type FairEdges = { readonly [edge: string]: readonly PathPoint[] | null };

/** Curves that an edge may follow, by name, in the frame's own axes; the last point's bulge means nothing. */
export type Curves = { readonly [name: string]: readonly PathPoint[] };

/**
 * The closed outline of a face: its ring of edges, fair through the places that an edge names, with corners rounded.
 *
 * `no-curve` names an edge that follows what isn't there; `unfair` one whose places no fair curve passes; `no-room` one
 * whose corner has too large a radius for what lies on either side. The first edge begins where the last one ends, so the ring
 * is closed. Edges run counter-clockwise when the face lists them so. `fair` are the face's fair edges where they are known already.
 */
export function ringOf(face: SpecFace, curves: Curves, fair: FairEdges = {}): Ring {
  const start = endOf(face.edges.at(-1)!, curves);
  if (start === undefined) return { kind: "no-curve", edge: face.edges.at(-1)!.id };
  const runs: Run[] = [];
  let at = start;
  for (const edge of face.edges) {
    const made = runsOf(edge, at, curves, fair[edge.id]);
    if (made.kind !== "ok") return { kind: made.kind, edge: edge.id };
    runs.push(...made.runs);
    at = runs.at(-1)!.points.at(-1)!;
  }
  return rounded(runs);
}

function endOf(edge: SpecEdge, curves: Curves): PathPoint | undefined {
  if (edge.to !== null) return { x: edge.to[0], y: edge.to[1], bulge: 0 };
  return Object.hasOwn(curves, edge.follows ?? "") ? curves[edge.follows!]!.at(-1) : undefined;
}

type Runs = { readonly kind: "ok"; readonly runs: Run[] } | { readonly kind: "no-curve" | "unfair" };

function runsOf(edge: SpecEdge, from: PathPoint, curves: Curves, known: FairEdges[string] | undefined): Runs {
  const end = endOf(edge, curves);
  if (end === undefined) return { kind: "no-curve" };
  const run = (points: readonly PathPoint[], corner: number): Run => ({ edge: edge.id, points, corner });
  if (edge.to === null) {
    const curve = curves[edge.follows!]!;
    const lead = same(from, curve[0]!) ? [] : [run([straight(from), curve[0]!], edge.corner)];
    return { kind: "ok", runs: [...lead, run(curve, edge.corner)] };
  }
  if (edge.through.length === 0) {
    return { kind: "ok", runs: same(from, end) ? [] : [run([straight(from), end], edge.corner)] };
  }
  const points = known === undefined ? fairThrough(placesOf(edge, from, end)) : known;
  return points === null ? { kind: "unfair" } : { kind: "ok", runs: [run(points, edge.corner)] };
}

function placesOf({ through }: SpecEdge, from: Point, to: Point): Point[] {
  return [{ x: from.x, y: from.y }, ...through.map(([x, y]) => ({ x, y })), { x: to.x, y: to.y }];
}

function fairThrough(places: readonly Point[]): readonly PathPoint[] | null {
  const fair = fairCurve(places, { closed: false });
  const path = fair.kind === "ok" ? fairPath(fair.curve) : undefined;
  return path?.kind === "ok" ? path.path.points : null;
}

function rounded(runs: readonly Run[]): Ring {
  const pieces = runs.map(({ points }) => points);
  const arced = new Set<number>();
  for (const [i, { edge, corner }] of runs.entries()) {
    if (corner === 0) continue;
    const next = (i + 1) % runs.length;
    const result = roundCorner(pieces[i]!, pieces[next]!, corner);
    if (result.kind === "no-room") return { kind: "no-room", edge };
    if (result.kind === "smooth") continue;
    pieces[i] = result.before;
    pieces[next] = result.after;
    arced.add(i);
  }
  const kept = pieces.map((piece, i) => (arced.has(i) ? piece : piece.slice(0, -1)));
  const points = kept.flat().map(({ x, y, bulge }) => ({ x, y, bulge }));
  const edges = kept.flatMap((piece, i) => piece.map(() => runs[i]!.edge));
  return { kind: "ok", path: { closed: true, points }, edges };
}

function straight({ x, y }: PathPoint): PathPoint {
  return { x, y, bulge: 0 };
}

function same(a: PathPoint, b: PathPoint): boolean {
  return a.x === b.x && a.y === b.y;
}
