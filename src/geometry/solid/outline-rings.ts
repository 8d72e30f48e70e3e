import { signedArea } from "../measure.ts";
import type { Path } from "../path.ts";
import type { Point } from "../point.ts";
import { tolerance } from "../tolerance.ts";
import { facet, facetCounts } from "./facet.ts";
import { ringsCross } from "./rings-cross.ts";
import type { Outline, SolidProblem } from "./solid.ts";

/** The rings of an outline: the outer counter-clockwise, the holes clockwise; or what is wrong with it. */
export type OutlineRings =
  | { readonly kind: "ok"; readonly outer: readonly Point[]; readonly holes: readonly (readonly Point[])[] }
  | { readonly kind: "bad"; readonly problem: SolidProblem };

/** Facets an outline by chord error (mm) and looks whether it bounds an area. */
export function outlineRings({ outer, holes }: Outline, chord: number): OutlineRings {
  for (const path of [outer, ...holes]) {
    const problem = pathProblem(path);
    if (problem) return { kind: "bad", problem };
  }
  const ring = faceted(outer, chord, 1);
  const inner = holes.map((hole) => faceted(hole, chord, -1));
  if (ringsCross([ring, ...inner])) return { kind: "bad", problem: "crosses-itself" };
  for (const [i, hole] of inner.entries()) {
    const others = inner.filter((_, j) => j !== i);
    if (!contains(ring, hole[0]!) || others.some((other) => contains(other, hole[0]!))) {
      return { kind: "bad", problem: "hole-outside" };
    }
  }
  return { kind: "ok", outer: ring, holes: inner };
}

/** What keeps a path from bounding an area; undefined if nothing does. Crossings are not looked for. */
export function pathProblem(path: Path): SolidProblem | undefined {
  const finite = path.points.every(
    (p) => [p.x, p.y, p.bulge].every(Number.isFinite) && Math.abs(p.bulge) <= 1,
  );
  if (!finite) return "not-finite";
  if (path.points.some((p) => Math.abs(p.x) > tolerance.largest || Math.abs(p.y) > tolerance.largest))
    return "too-large";
  if (!path.closed) return "not-closed";
  const { points } = path;
  if (points.length < 2) return "no-area";
  const repeated = (p: Point, i: number) => near(p, points.at(i - 1)!);
  if (points.some(repeated)) return "repeated-point";
  return Math.abs(signedArea(path)) > 0 ? undefined : "no-area";
}

function near(a: Point, b: Point): boolean {
  return Math.hypot(a.x - b.x, a.y - b.y) <= tolerance.exact;
}

/** A closed path's vertices, turned to run with the sign of area wanted. */
function faceted(path: Path, chord: number, sign: number): Point[] {
  const points = facet(path, facetCounts(path, chord));
  return Math.sign(signedArea(path)) === sign ? points : points.reverse();
}

/** Whether a polygon runs round a place an odd number of times. */
export function contains(ring: readonly Point[], place: Point): boolean {
  let inside = false;
  for (const [i, a] of ring.entries()) {
    const b = ring[(i + 1) % ring.length]!;
    if (a.y > place.y === b.y > place.y) continue;
    if (a.x + ((place.y - a.y) / (b.y - a.y)) * (b.x - a.x) > place.x) inside = !inside;
  }
  return inside;
}
