import type { Path } from "./path.ts";
import type { Point } from "./point.ts";

/** The closed path of straight lines through some points, in their order. */
export function polygon(points: readonly Point[]): Path {
  return { closed: true, points: points.map(({ x, y }) => ({ x, y, bulge: 0 })) };
}
