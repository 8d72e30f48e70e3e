import type { Point } from "./point.ts";

/**
 * The bulge of the arc from `from` to `to` that passes through `via`: tan(sweep / 4), positive counter-clockwise.
 *
 * The three on one line give 0. By the inscribed angle: the angle at `via` between the two others is half the rest of the
 * circle. An arc of more than half a circle gives a bulge above 1, which no single segment of a path may have.
 */
export function bulgeThrough(from: Point, via: Point, to: Point): number {
  const [ax, ay, bx, by] = [via.x - from.x, via.y - from.y, to.x - via.x, to.y - via.y];
  const turn = Math.atan2(ax * by - ay * bx, ax * bx + ay * by);
  return Math.tan(turn / 2);
}
