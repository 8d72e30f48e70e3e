import type { Extents } from "../measure.ts";

/** An upright rectangle with a margin all round it, mm; a negative one takes as much off. */
export function grown({ minX, minY, maxX, maxY }: Extents, by: number): Extents {
  return { minX: minX - by, minY: minY - by, maxX: maxX + by, maxY: maxY + by };
}
