import { nearestShare, pointOn } from "../../geometry/path-measures/segment-places.ts";
import type { Point } from "../../geometry/point.ts";
import { type Segment, segmentLength } from "../../geometry/segment.ts";

/** Lines and arcs, ready to be asked for the nearest of them. */
export type Ahead = {
  /** The distance to the nearest of them, mm, infinite where there is none. */
  readonly distance: (place: Point) => number;
  /** Whether none of them is nearer than that. */
  readonly isClear: (place: Point, distance: number) => boolean;
};

type Known = { readonly segment: Segment; readonly x: number; readonly y: number; readonly reach: number };

/**
 * Lines and arcs with a circle round each, so that most need not be looked at: one whose circle is farther than the nearest
 * found can't be nearer.
 */
export function aheadOf(segments: readonly Segment[]): Ahead {
  const known = segments.map((segment): Known => {
    const { x, y } = pointOn(segment, 0.5);
    return { segment, x, y, reach: segmentLength(segment) / 2 };
  });
  // Places are asked along a path: the one that was nearest last is likely to be so again.
  let likely = 0;
  const nearest = (place: Point, enough: number) => {
    if (known.length === 0) return Number.POSITIVE_INFINITY;
    let best = distanceTo(known[likely]!.segment, place);
    for (let i = 0; i < known.length && best >= enough; i++) {
      const { segment, x, y, reach } = known[i]!;
      const far = best + reach;
      if ((x - place.x) ** 2 + (y - place.y) ** 2 >= far * far) continue;
      const distance = distanceTo(segment, place);
      if (distance < best) [best, likely] = [distance, i];
    }
    return best;
  };
  return {
    distance: (place) => nearest(place, 0),
    isClear: (place, distance) => nearest(place, distance) >= distance,
  };
}

/** Beyond this radius, mm, an arc's centre is too far away for its digits. */
const farCentre = 1e5;

function distanceTo(segment: Segment, place: Point): number {
  if (segment.kind === "line" || segment.radius > farCentre) {
    const { x, y } = pointOn(segment, nearestShare(segment, place));
    return Math.sqrt((place.x - x) ** 2 + (place.y - y) ** 2);
  }
  const { centre, radius, from, to, sweep } = segment;
  const [dx, dy] = [place.x - centre.x, place.y - centre.y];
  // Within the arc's sector, between the rays from its centre through its ends; an arc is at most half a circle.
  const turn = Math.sign(sweep);
  const pastStart = ((from.x - centre.x) * dy - (from.y - centre.y) * dx) * turn >= 0;
  const beforeEnd = ((to.x - centre.x) * dy - (to.y - centre.y) * dx) * turn <= 0;
  if (pastStart && beforeEnd) return Math.abs(Math.sqrt(dx * dx + dy * dy) - radius);
  const toStart = (place.x - from.x) ** 2 + (place.y - from.y) ** 2;
  return Math.sqrt(Math.min(toStart, (place.x - to.x) ** 2 + (place.y - to.y) ** 2));
}
