import type { Path } from "../path.ts";
import type { Point } from "../point.ts";
import { segmentLength, segmentsOf } from "../segment.ts";
import { directionOn, pointOn } from "./segment-places.ts";

/** A place on a path: where, the direction of travel (unit length), and on which segment; or that there is none. */
export type PlaceAlong =
  | { readonly kind: "ok"; readonly point: Point; readonly direction: Point; readonly segment: number }
  | { readonly kind: "beyond" }
  | { readonly kind: "empty" };

/**
 * The place at a distance along a path from its first point, mm; exact for arcs.
 *
 * At a vertex the segment that arrives there answers (the first one at 0). A closed path is run round again and again,
 * backwards for negative distances; on an open one a distance off its ends is `beyond`. `empty` without any length.
 */
export function placeAlong(path: Path, distance: number): PlaceAlong {
  const segments = segmentsOf(path);
  const lengths = segments.map(segmentLength);
  const whole = lengths.reduce((sum, length) => sum + length, 0);
  if (!(whole > 0)) return { kind: "empty" };
  const wanted = path.closed ? distance - whole * Math.floor(distance / whole) : distance;
  if (!(wanted >= 0 && wanted <= whole)) return { kind: "beyond" };
  let before = 0;
  for (const [i, segment] of segments.entries()) {
    const length = lengths[i]!;
    const last = i === segments.length - 1;
    if (length > 0 && (wanted <= before + length || last)) {
      const share = Math.min(1, (wanted - before) / length);
      return {
        kind: "ok",
        point: pointOn(segment, share),
        direction: directionOn(segment, share),
        segment: i,
      };
    }
    before += length;
  }
  return { kind: "beyond" };
}
