import { fairCurve } from "../../geometry/fair/fair-curve.ts";
import { fairPath } from "../../geometry/fair/fair-path.ts";
import type { PathPoint } from "../../geometry/path.ts";
import { ordinatesAt } from "../../geometry/path-measures/ordinates-at.ts";
import type { Point } from "../../geometry/point.ts";
import { type Segment, segmentsOf } from "../../geometry/segment.ts";

/**
 * The front edge of a tailpiece, from its treble side to its bass side, mm: x along the core, y to the treble side; `middle` is
 * x on the centreline. `outside`: an outer exit lies beyond the plate's sides. `unfair`: no fair curve passes the exits.
 */
export type FrontEdge =
  | { readonly kind: "ok"; readonly points: readonly PathPoint[]; readonly middle: number }
  | { readonly kind: "outside" | "unfair" };

/**
 * The front edge through the strings' exits, highest string first: a fair curve from the outer exit to the other, and from each
 * straight on, as the curve leaves it, to the plate's side at `half` its width. A fair curve's free end has no curvature, so
 * neither has the place where the straight begins. Exits that lie in one line give a straight edge.
 */
export function frontEdge(exits: readonly Point[], half: number): FrontEdge {
  const [first, last] = [exits[0]!, exits.at(-1)!];
  if (!(first.y < half && last.y > -half)) return { kind: "outside" };
  // A station with a name is a vertex of the path: the edge passes every exit exactly.
  const fair = fairCurve(
    exits.map(({ x, y }, i) => ({ x, y, id: `${i}` })),
    { closed: false },
  );
  const made = fair.kind === "ok" ? fairPath(fair.curve) : undefined;
  if (made?.kind !== "ok") return { kind: "unfair" };
  const segments = segmentsOf(made.path);
  const treble = ledTo(half, first, leaving(segments[0]!, "from"));
  const bass = ledTo(-half, last, leaving(segments.at(-1)!, "to"));
  const straight = (point: Point): PathPoint => ({ x: point.x, y: point.y, bulge: 0 });
  const points = [straight(treble), ...made.path.points.slice(0, -1), straight(last), straight(bass)];
  // Ordinates are looked for over a place of the first axis, which is y here.
  const turned = points.map(({ x, y, bulge }) => ({ x: y, y: -x, bulge }));
  const [middle] = ordinatesAt(segmentsOf({ closed: false, points: turned }), 0);
  return middle === undefined ? { kind: "unfair" } : { kind: "ok", points, middle: -middle };
}

/** The direction of a segment at one of its ends, radians. */
function leaving(segment: Segment, end: "from" | "to"): number {
  if (segment.kind === "line")
    return Math.atan2(segment.to.y - segment.from.y, segment.to.x - segment.from.x);
  const { start, sweep } = segment;
  return start + (end === "from" ? 0 : sweep) + (Math.sign(sweep) * Math.PI) / 2;
}

/** Where the line through a place in a direction has come to y. */
function ledTo(y: number, from: Point, direction: number): Point {
  return { x: from.x + (y - from.y) / Math.tan(direction), y };
}
