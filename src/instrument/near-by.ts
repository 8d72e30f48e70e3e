import type { Extents } from "../geometry/measure.ts";
import type { Point } from "../geometry/point.ts";

/** What is farther apart than this, mm, is told by the boxes round it, which is no more than it is. */
export const far = 8;

/**
 * Of some things those that a wall of `wanted` mm may be looked for to, by how far the boxes round them are from something; the nearest alone where none
 * is so near. What is dropped is further away than anything that is asked for.
 */
export function nearBy<T>(things: readonly T[], wanted: number, boxesApart: (thing: T) => number): T[] {
  const near = things.filter((thing) => boxesApart(thing) < Math.max(far, wanted));
  if (near.length > 0 || things.length === 0) return near;
  return [things.reduce((best, thing) => (boxesApart(thing) < boxesApart(best) ? thing : best))];
}

/** The box in plan round a straight hole between two places, mm; round its axis alone where no radius is given. */
export function boxRound(from: Point, to: Point, radius = 0): Extents {
  return {
    ...{ minX: Math.min(from.x, to.x) - radius, maxX: Math.max(from.x, to.x) + radius },
    ...{ minY: Math.min(from.y, to.y) - radius, maxY: Math.max(from.y, to.y) + radius },
  };
}
