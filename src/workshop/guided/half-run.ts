import type { Path, PathPoint } from "../../geometry/path.ts";
import { pointOn } from "../../geometry/path-measures/segment-places.ts";
import { segmentsOf } from "../../geometry/segment.ts";
import type { EdgeUse } from "./cut-runs.ts";

/** Which of an outline's long edges is cut, as it lies before whoever cuts: the one toward them or the one away from them. */
export type LongEdge = "low" | "high";

/**
 * What is done with each segment of a closed outline that lies along x, one of whose long edges is cut between two places (mm): that edge is cut, by hand
 * what of it ends before `handTo` (null for none), and the other edge and both ends are left. A segment counts by its middle.
 */
export function longEdgeUses(
  outline: Path,
  edge: LongEdge,
  between: readonly [from: number, to: number],
  handTo: number | null,
): EdgeUse[] {
  return segmentsOf(outline).map((segment) => {
    const { x, y } = pointOn(segment, 0.5);
    const isCut = (edge === "low" ? y < 0 : y > 0) && x > between[0] && x < between[1];
    if (!isCut) return "joined";
    return handTo !== null && x < handTo ? "hand" : "cut";
  });
}

/** A closed outline with a vertex more on every straight edge that crosses a place along x. */
export function splitAt({ points }: Path, x: number): Path {
  const split = points.flatMap((from, i): PathPoint[] => {
    const to = points[(i + 1) % points.length]!;
    if (from.bulge !== 0 || (from.x - x) * (to.x - x) >= 0) return [from];
    const y = from.y + ((to.y - from.y) * (x - from.x)) / (to.x - from.x);
    return [from, { x, y, bulge: 0 }];
  });
  return { closed: true, points: split };
}

/** A closed outline that starts beside its straight end on the centreline, with a vertex more where that end crosses y = 0. */
export function middleSplit({ points }: Path): Path {
  const last = points.at(-1)!;
  return { closed: true, points: [...points, { x: last.x, y: 0, bulge: 0 }] };
}
