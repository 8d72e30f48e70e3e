/**
 * A place that a fair curve passes through, mm.
 *
 * `id` names it: it is then an end point of the path made from the curve, and can be found there again. `corner` breaks
 * the curve here: 0 leaves the corner sharp, a positive radius (mm) rounds it, and the curve then passes it by.
 * `arrive` and `leave` are directions of travel in degrees, counter-clockwise from x: at an open end and at a corner
 * they hold the curve to that direction; without them the end is free, without curvature, like a batten's. On a smooth
 * station they are refused.
 */
export type Station = {
  readonly x: number;
  readonly y: number;
  readonly id?: string;
  readonly corner?: number;
  readonly arrive?: number;
  readonly leave?: number;
};

/** What is wrong with a list of stations; `too-large` is a number beyond `tolerance.largest`. */
export type StationProblem =
  | "not-finite"
  | "too-large"
  | "too-few"
  | "repeated"
  | "negative-radius"
  | "direction-on-smooth"
  | "same-id";
