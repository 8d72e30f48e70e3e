import type { Extents } from "../measure.ts";

/** Whether two upright rectangles have an area in common; touching is none. */
export function overlap(a: Extents, b: Extents): boolean {
  return a.minX < b.maxX && b.minX < a.maxX && a.minY < b.maxY && b.minY < a.maxY;
}
