import type { Point } from "../point.ts";
import type { Segment } from "../segment.ts";
import { nearestShare, pointOn } from "./segment-places.ts";

/** A segment within a disc: what is no more than half a turn lies about its chord's middle by half of the chord. */
type Bounded = { readonly segment: Segment; readonly x: number; readonly y: number; readonly reach: number };

/**
 * The distance from each of many places to the nearest of the same lines and arcs, mm; exact for arcs, infinite where there is none. What can't be
 * nearest by the disc round it is passed over, and the one that was nearest to the place before is asked first.
 */
export function distancesTo(segments: readonly Segment[]): (place: Point) => number {
  const all = segments.map(boundedBy);
  let first = 0;
  return (place) => {
    if (all.length === 0) return Number.POSITIVE_INFINITY;
    let [best, at] = [distance(all[first]!.segment, place), first];
    for (let i = 0; i < all.length; i++) {
      const { segment, x, y, reach } = all[i]!;
      const least = Math.hypot(place.x - x, place.y - y) - reach;
      // But for the last digits, so that rounding never passes the nearest over.
      if (i === first || least > best + 1e-9) continue;
      const found = distance(segment, place);
      if (found < best) [best, at] = [found, i];
    }
    first = at;
    return best;
  };
}

function boundedBy(segment: Segment): Bounded {
  const { from, to } = segment;
  return {
    ...{ segment, x: (from.x + to.x) / 2, y: (from.y + to.y) / 2 },
    reach: Math.hypot(to.x - from.x, to.y - from.y) / 2,
  };
}

function distance(segment: Segment, place: Point): number {
  const { x, y } = pointOn(segment, nearestShare(segment, place));
  return Math.hypot(place.x - x, place.y - y);
}
