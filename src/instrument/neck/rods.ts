import { circle } from "../../geometry/circle.ts";
import type { Path } from "../../geometry/path.ts";
import { step } from "../../step/step.ts";

/** What the reinforcing rods follow from; lengths in mm, from the nut. `offset` is that of two rods from the centreline. */
export type RodsInput = {
  readonly count: number;
  readonly width: number;
  readonly depth: number;
  readonly start: number;
  readonly length: number;
  readonly offset: number;
};

/**
 * A rod's channel, sunk from z = 0; mm. Its middle lies at `y`, to the treble side; from `start` on it is `length` long, its
 * round ends included. `path` is its outline from the front, counter-clockwise.
 */
export type Rod = {
  readonly y: number;
  readonly width: number;
  readonly depth: number;
  readonly start: number;
  readonly length: number;
  readonly path: Path;
};

/**
 * The channels of the reinforcing rods: none, one on the centreline, or one either side of it, the treble one first.
 *
 * They are routed, so their ends are round with half the width. One no longer than wide is drawn as a circle, which is not
 * what was asked for: rodsAtOdds finds it beforehand.
 */
export const neckRods = step("neck.rods", 1, (given: RodsInput): readonly Rod[] => {
  const { count, width, depth, start, length, offset } = given;
  const across = count === 2 ? [offset, -offset] : count === 1 ? [0] : [];
  return across.map((y) => ({ y, width, depth, start, length, path: channelPath(given, y) }));
});

function channelPath({ width, start, length }: RodsInput, y: number): Path {
  const radius = width / 2;
  if (length <= width) return circle({ x: start + length / 2, y }, radius);
  const [from, to] = [start + radius, start + length - radius];
  return {
    closed: true,
    points: [
      { x: from, y: y - radius, bulge: 0 },
      { x: to, y: y - radius, bulge: 1 },
      { x: to, y: y + radius, bulge: 0 },
      { x: from, y: y + radius, bulge: 1 },
    ],
  };
}
