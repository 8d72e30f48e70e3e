import type { Path } from "../../geometry/path.ts";
import { directionOn } from "../../geometry/path-measures/segment-places.ts";
import type { Point } from "../../geometry/point.ts";
import { reversedPath } from "../../geometry/reversed-path.ts";
import { segmentLength, segmentsOf } from "../../geometry/segment.ts";
import type { Feed } from "../../workshop/guided/feed.ts";

/** An end of a path and the direction in which it is passed there, of unit length. */
export type RunEnd = { readonly at: Point; readonly way: Point };

/** Where a path begins and ends for a cut that runs along it or back along it; mm. It must have some length. */
export function runEnds(path: Path, way: Feed["way"]): { readonly start: RunEnd; readonly end: RunEnd } {
  const real = segmentsOf(way === "along" ? path : reversedPath(path)).filter(
    (one) => segmentLength(one) > 1e-6,
  );
  const [first, last] = [real[0]!, real.at(-1)!];
  return {
    start: { at: first.from, way: directionOn(first, 0) },
    end: { at: last.to, way: directionOn(last, 1) },
  };
}
