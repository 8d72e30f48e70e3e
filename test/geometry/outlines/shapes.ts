import type { Path, PathPoint } from "../../../src/geometry/path.ts";

/** A closed path of points written as x, y and bulge where it is not 0. */
export function closed(...points: readonly (readonly [number, number, number?])[]): Path {
  return { closed: true, points: points.map(([x, y, bulge = 0]): PathPoint => ({ x, y, bulge })) };
}

/** An open path of points written as x, y and bulge where it is not 0. */
export function open(...points: readonly (readonly [number, number, number?])[]): Path {
  return { ...closed(...points), closed: false };
}

/** An upright rectangle from its lower left corner. */
export function rectangle(x: number, y: number, long: number, wide: number): Path {
  return closed([x, y], [x + long, y], [x + long, y + wide], [x, y + wide]);
}

/** A full circle, counter-clockwise, as two half circles. */
export function circle(x: number, y: number, radius: number): Path {
  return closed([x + radius, y, 1], [x - radius, y, 1]);
}

/** A full circle, clockwise, as holes are. */
export function hole(x: number, y: number, radius: number): Path {
  return closed([x + radius, y, -1], [x - radius, y, -1]);
}
