/**
 * Why a path or region cannot be worked on, and where. `index` is the point that the segment in question starts at, of
 * path number `path` in the order of `outlinesOf`.
 *
 * - `open`: not closed where it has to be.
 * - `closed`: closed where it has to be open.
 * - `too-few-points`: fewer than two points.
 * - `not-finite`: a coordinate or bulge that is not a finite number.
 * - `out-of-range`: a coordinate beyond 1,000,000 mm, where a micrometre can no longer be told.
 * - `bulge-over-half`: an arc of more than half a circle.
 * - `repeated-point`: a segment shorter than `tolerance.exact`. Not in the way of anything; it is passed over.
 * - `zero-length`: all points are one place.
 * - `no-area`: a closed path that surrounds nothing, as when all its points are on one line.
 * - `self-crossing`: runs across itself, or round some place more than once.
 * - `wrong-winding`: an outer path clockwise or a hole counter-clockwise.
 * - `overlapping`: outlines of a region cross one another, or a hole lies outside its outer path.
 */
export type Problem = {
  readonly code:
    | "open"
    | "closed"
    | "too-few-points"
    | "not-finite"
    | "out-of-range"
    | "bulge-over-half"
    | "repeated-point"
    | "zero-length"
    | "no-area"
    | "self-crossing"
    | "wrong-winding"
    | "overlapping";
  readonly path: number;
  readonly index: number;
};
