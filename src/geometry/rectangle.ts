import type { Extents } from "./measure.ts";
import type { Path } from "./path.ts";

/** The rectangle between two opposite corners, closed, mm; counter-clockwise where the first is the lower left one. */
export function rectangle(x1: number, y1: number, x2: number, y2: number): Path {
  return {
    closed: true,
    points: [
      { x: x1, y: y1, bulge: 0 },
      { x: x2, y: y1, bulge: 0 },
      { x: x2, y: y2, bulge: 0 },
      { x: x1, y: y2, bulge: 0 },
    ],
  };
}

/** The rectangle that extents are of, counter-clockwise from its lower left corner. */
export function rectangleOf({ minX, minY, maxX, maxY }: Extents): Path {
  return rectangle(minX, minY, maxX, maxY);
}
