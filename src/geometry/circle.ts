import type { Path } from "./path.ts";
import type { Point } from "./point.ts";

/** A whole circle as two half-circle arcs, counter-clockwise; `radius` in mm, above 0. */
export function circle(centre: Point, radius: number): Path {
  return {
    closed: true,
    points: [
      { x: centre.x + radius, y: centre.y, bulge: 1 },
      { x: centre.x - radius, y: centre.y, bulge: 1 },
    ],
  };
}
