import { pointOn } from "../../geometry/path-measures/segment-places.ts";
import type { Point } from "../../geometry/point.ts";
import { type Segment, segmentLength } from "../../geometry/segment.ts";

/** The greatest of something along lines and arcs, and where; minus infinity where there is no line and no arc. */
export type Greatest = { readonly value: number; readonly at: Point };

/** How far apart it is looked at to begin with, mm, and how nearly straight it must run between two looks. */
const looks = 1;
const straight = 2e-5;

/**
 * The greatest value of a function of places along some lines and arcs that changes by no more than the place moves, as a distance
 * does. It is looked at every millimetre and at all ends; a stretch on which the middle stands off the straight between its ends, and which
 * may hold more than was found, is halved. So a peak is found where the function is smooth on a millimetre, and settled to a
 * thousandth of a millimetre or better.
 */
export function greatestAlong(segments: readonly Segment[], of: (place: Point) => number): Greatest {
  let best: Greatest = { value: Number.NEGATIVE_INFINITY, at: { x: 0, y: 0 } };
  for (const segment of segments) {
    const look = (share: number) => {
      const at = pointOn(segment, share);
      const value = of(at);
      if (value > best.value) best = { value, at: { x: at.x, y: at.y } };
      return value;
    };
    const length = segmentLength(segment);
    const halve = (from: number, to: number, atFrom: number, atTo: number, deep: number) => {
      if ((atFrom + atTo + (to - from) * length) / 2 <= best.value) return;
      const middle = (from + to) / 2;
      const value = look(middle);
      if (deep === 0 || Math.abs(value - (atFrom + atTo) / 2) <= straight) return;
      halve(from, middle, atFrom, value, deep - 1);
      halve(middle, to, value, atTo, deep - 1);
    };
    const count = Math.max(1, Math.ceil(length / looks));
    let before = look(0);
    for (let k = 1; k <= count; k++) {
      const value = look(k / count);
      halve((k - 1) / count, k / count, before, value, 12);
      before = value;
    }
  }
  return best;
}
