import { type Edge, edgeBetween } from "../arrangement/edge.ts";
import type { Point } from "../point.ts";
import type { Segment } from "../segment.ts";
import { meetCarriers } from "./carriers.ts";
import { meetEdges } from "./meet-edges.ts";

/**
 * What two lines or arcs have in common.
 *
 * - `none`: nothing.
 * - `one`: they cross, or an end of one is on the other, at one point.
 * - `tangent`: they touch at one point, running the same way or opposite ways there.
 * - `two`: two points.
 * - `overlapping`: they lie on one another from one point to another, in the order of the first.
 */
export type Intersection =
  | { readonly outcome: "none" }
  | { readonly outcome: "one"; readonly at: Point }
  | { readonly outcome: "tangent"; readonly at: Point }
  | { readonly outcome: "two"; readonly at: readonly [Point, Point] }
  | { readonly outcome: "overlapping"; readonly from: Point; readonly to: Point };

/**
 * Where two segments meet. Places within `tolerance.snap` (mm) of one another count as one, so that two circles
 * nearer to touching than that touch, and segments nearer than that along a length overlap. A segment of no length
 * meets nothing.
 */
export function intersectSegments(a: Segment, b: Segment): Intersection {
  const [p, q] = [edgeOf(a), edgeOf(b)];
  if (isNothing(p) || isNothing(q)) return { outcome: "none" };
  const { points, overlap } = meetEdges(p, q);
  const places: Point[] = [];
  for (let k = 0; k < points.length; k += 2) places.push({ x: points[k]!, y: points[k + 1]! });
  const [first, second] = places;
  if (first === undefined) return { outcome: "none" };
  if (overlap) {
    const [from, to] = endsAlong(p, places);
    return { outcome: "overlapping", from, to };
  }
  if (second !== undefined) return { outcome: "two", at: [first, second] };
  const touching = (p.turn !== 0 || q.turn !== 0) && meetCarriers(p, q).length === 2;
  return { outcome: touching ? "tangent" : "one", at: first };
}

function edgeOf(segment: Segment): Edge {
  const bulge = segment.kind === "arc" ? Math.tan(segment.sweep / 4) : 0;
  return edgeBetween(segment.from.x, segment.from.y, segment.to.x, segment.to.y, bulge, 1, 0);
}

function isNothing(edge: Edge): boolean {
  return edge.ax === edge.bx && edge.ay === edge.by;
}

/** The two places farthest apart along the first edge, in its order. */
function endsAlong(edge: Edge, places: readonly Point[]): [Point, Point] {
  const along = ({ x, y }: Point) => {
    const fromA = Math.hypot(x - edge.ax, y - edge.ay);
    return fromA / (fromA + Math.hypot(x - edge.bx, y - edge.by));
  };
  const sorted = [...places].sort((a, b) => along(a) - along(b));
  return [sorted[0]!, sorted.at(-1)!];
}
