import type { Point } from "../point.ts";
import { outlinesOf, type Region } from "../region.ts";
import { type Segment, segmentsOf } from "../segment.ts";

/**
 * A corner that a round cutter cannot get into. `before` and `after` are the unit directions of the outline there, and
 * `turn` is by how much they differ, in degrees, from 0 to 180.
 */
export type HollowCorner = {
  readonly at: Point;
  readonly before: Point;
  readonly after: Point;
  readonly turn: number;
};

/**
 * The corners of a good region's outlines that are hollow for a cutter inside or outside of it and turn by at least
 * `least` degrees (more than 0), in the order of the outlines.
 */
export function hollowCorners(region: Region, side: "inside" | "outside", least: number): HollowCorner[] {
  const found: HollowCorner[] = [];
  for (const path of outlinesOf(region)) {
    const segments = segmentsOf(path).filter(({ from, to }) => from.x !== to.x || from.y !== to.y);
    segments.forEach((segment, i) => {
      const before = directionAt(segments.at(i - 1)!, "end");
      const after = directionAt(segment, "start");
      const cross = before.x * after.y - before.y * after.x;
      const turn = (Math.atan2(Math.abs(cross), before.x * after.x + before.y * after.y) * 180) / Math.PI;
      if (cross > 0 === (side === "inside") && turn >= least)
        found.push({ at: segment.from, before, after, turn });
    });
  }
  return found;
}

/** The unit direction of a segment at one of its ends: square to the radius on an arc. */
function directionAt(segment: Segment, end: "start" | "end"): Point {
  if (segment.kind === "line") {
    const [dx, dy] = [segment.to.x - segment.from.x, segment.to.y - segment.from.y];
    const length = Math.hypot(dx, dy);
    return { x: dx / length, y: dy / length };
  }
  const { centre, radius, sweep } = segment;
  const at = end === "start" ? segment.from : segment.to;
  const turn = Math.sign(sweep) / radius;
  return { x: -(at.y - centre.y) * turn, y: (at.x - centre.x) * turn };
}
