import type { Point } from "./point.ts";

/** Whether a polygon, given by its corners, runs round a place an odd number of times; on an edge itself the answer means nothing. */
export function polygonRound(corners: readonly Point[], { x, y }: Point): boolean {
  let inside = false;
  let a = corners.at(-1);
  for (const b of corners) {
    if (a !== undefined && a.y > y !== b.y > y && x < a.x + ((y - a.y) / (b.y - a.y)) * (b.x - a.x))
      inside = !inside;
    a = b;
  }
  return inside;
}
