import type { PathPoint } from "../path.ts";
import type { Run } from "./merge-neighbours.ts";

/**
 * Lines that can be one line from the first one's start. Each point passed leaves open only directions that come within
 * `stray` (mm) of it: the next end has to lie in one of those, ahead of the last.
 */
export function lineRun(start: PathPoint, to: PathPoint, stray: number): Run {
  const base = Math.atan2(to.y - start.y, to.x - start.x);
  const [ex, ey] = [Math.cos(base), Math.sin(base)];
  const run = (low: number, high: number, reached: number): Run => ({
    point: start,
    longer: (from, next) => {
      const along = (next.x - start.x) * ex + (next.y - start.y) * ey;
      const aside = (next.y - start.y) * ex - (next.x - start.x) * ey;
      const angle = Math.atan2(aside, along);
      if (from.bulge !== 0 || along <= reached || angle < low || angle > high) return undefined;
      const open = spareAngle(Math.hypot(along, aside), stray);
      return run(Math.max(low, angle - open), Math.min(high, angle + open), along);
    },
  });
  const length = Math.hypot(to.x - start.x, to.y - start.y);
  return run(-spareAngle(length, stray), spareAngle(length, stray), length);
}

/** By how much a line from a point may turn and still pass within `stray` of a place so far away, radians. */
function spareAngle(far: number, stray: number): number {
  return far > stray ? Math.asin(stray / far) : Math.PI / 2;
}
