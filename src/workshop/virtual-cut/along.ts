import { pointOn } from "../../geometry/path-measures/segment-places.ts";
import type { Point } from "../../geometry/point.ts";
import { type Segment, segmentLength } from "../../geometry/segment.ts";

/** The greatest of something along lines and arcs, and where; minus infinity where there is no line and no arc. */
export type Greatest = { readonly value: number; readonly at: Point };

/** How close the looks come everywhere that may hold more than was found, mm, and how nearly straight it must run between two then. */
const looks = 1;
const straight = 2e-5;

/** How often a stretch is halved at most: a metre to a micrometre. */
const deepest = 20;

/**
 * The greatest value of a function of places along some lines and arcs that changes by no more than the place moves, as a distance
 * does. A stretch that may hold more than was found, by the values at its ends and its length, is halved until it is no longer than a
 * millimetre and its middle no more off the straight between its ends. So a peak is found where the function is smooth on a
 * millimetre, and settled to a thousandth of a millimetre or better.
 */
export function greatestAlong(segments: readonly Segment[], of: (place: Point) => number): Greatest {
  let best: Greatest = { value: Number.NEGATIVE_INFINITY, at: { x: 0, y: 0 } };
  for (const segment of segments) {
    const length = segmentLength(segment);
    const look = (share: number) => {
      const at = pointOn(segment, share);
      const value = of(at);
      if (value > best.value) best = { value, at: { x: at.x, y: at.y } };
      return value;
    };
    const halve = (from: number, to: number, atFrom: number, atTo: number, deep: number) => {
      const apart = (to - from) * length;
      if (deep === 0 || (atFrom + atTo + apart) / 2 <= best.value) return;
      const middle = (from + to) / 2;
      const value = look(middle);
      if (apart <= looks && Math.abs(value - (atFrom + atTo) / 2) <= straight) return;
      halve(from, middle, atFrom, value, deep - 1);
      halve(middle, to, value, atTo, deep - 1);
    };
    halve(0, 1, look(0), look(1), deepest);
  }
  return best;
}
