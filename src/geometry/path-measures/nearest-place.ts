import type { Path } from "../path.ts";
import type { Point } from "../point.ts";
import { segmentLength, segmentsOf } from "../segment.ts";
import { nearestShare, pointOn } from "./segment-places.ts";

/** The place of a path nearest to another: where, how far (mm), on which segment and how far along the path (mm). */
export type NearestPlace =
  | {
      readonly kind: "ok";
      readonly point: Point;
      readonly distance: number;
      readonly segment: number;
      readonly along: number;
    }
  | { readonly kind: "empty" };

/**
 * The place of a path nearest to `place`, exact for arcs; the first along the path of several equally near.
 *
 * `empty` where the path has no segment: fewer than two points, or one if closed.
 */
export function nearestPlace(path: Path, place: Point): NearestPlace {
  let best: NearestPlace = { kind: "empty" };
  let before = 0;
  for (const [i, segment] of segmentsOf(path).entries()) {
    const share = nearestShare(segment, place);
    const point = pointOn(segment, share);
    const distance = Math.hypot(place.x - point.x, place.y - point.y);
    const length = segmentLength(segment);
    if (best.kind === "empty" || distance < best.distance) {
      best = { kind: "ok", point, distance, segment: i, along: before + share * length };
    }
    before += length;
  }
  return best;
}
