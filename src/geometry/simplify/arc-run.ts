import type { PathPoint } from "../path.ts";
import type { Point } from "../point.ts";
import type { Run } from "./merge-neighbours.ts";

/**
 * Arcs that can be one arc, up to half a circle, from the first one's start. The one arc has the sum of their sweeps;
 * it has to pass within `stray` (mm) of their ends and middles.
 */
export function arcRun(start: PathPoint, to: PathPoint, stray: number): Run {
  return run(start, [middleOf(start, to), to], 4 * Math.atan(start.bulge), start.bulge, stray);
}

function run(start: PathPoint, passes: readonly Point[], sweep: number, bulge: number, stray: number): Run {
  return {
    point: { x: start.x, y: start.y, bulge },
    longer: (from, to) => {
      if (from.bulge * bulge <= 0) return undefined;
      const whole = sweep + 4 * Math.atan(from.bulge);
      if (Math.abs(whole) > 1.5 * Math.PI) return undefined;
      const asked = Math.tan(whole / 4);
      // Beyond half a circle by less than can be felt is half a circle.
      const chord = Math.hypot(to.x - start.x, to.y - start.y);
      if ((Math.abs(asked) - 1) * (chord / 2) > stray) return undefined;
      const merged = Math.max(-1, Math.min(1, asked));
      const all = [...passes, middleOf(from, to), to];
      return passesAll(start, to, merged, all, stray) ? run(start, all, whole, merged, stray) : undefined;
    },
  };
}

/** Whether all places lie within `stray` of the arc's circle. */
function passesAll(from: Point, to: Point, bulge: number, places: readonly Point[], stray: number): boolean {
  const [dx, dy] = [to.x - from.x, to.y - from.y];
  const radius = (Math.hypot(dx, dy) * (1 + bulge * bulge)) / (4 * Math.abs(bulge));
  const aside = (1 - bulge * bulge) / (4 * bulge);
  const [x, y] = [(from.x + to.x) / 2 - dy * aside, (from.y + to.y) / 2 + dx * aside];
  return places.every((place) => Math.abs(Math.hypot(place.x - x, place.y - y) - radius) <= stray);
}

function middleOf(from: PathPoint, to: Point): Point {
  const [dx, dy] = [to.x - from.x, to.y - from.y];
  return { x: from.x + (dx + from.bulge * dy) / 2, y: from.y + (dy - from.bulge * dx) / 2 };
}
