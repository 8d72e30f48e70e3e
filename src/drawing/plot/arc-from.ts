import type { Path } from "../../geometry/path.ts";
import type { Point } from "../../geometry/point.ts";

/** An arc counter-clockwise between two directions, radians, less than half a circle. */
export function arcFrom(centre: Point, radius: number, from: number, to: number): Path {
  const at = (angle: number) => ({
    x: centre.x + radius * Math.cos(angle),
    y: centre.y + radius * Math.sin(angle),
  });
  return {
    closed: false,
    points: [
      { ...at(from), bulge: Math.tan((to - from) / 4) },
      { ...at(to), bulge: 0 },
    ],
  };
}
