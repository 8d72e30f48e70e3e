import type { Point } from "../point.ts";
import type { Arc, Segment } from "../segment.ts";

/** The place at a share (0 its start, 1 its end) of a segment's length, mm. */
export function pointOn(segment: Segment, share: number): Point {
  if (share <= 0) return segment.from;
  if (share >= 1) return segment.to;
  if (segment.kind === "line") {
    const { from, to } = segment;
    return { x: from.x + share * (to.x - from.x), y: from.y + share * (to.y - from.y) };
  }
  // From the chord, not from the centre: that is far away where an arc is nearly straight.
  const half = segment.sweep / 2;
  const reach = Math.sin(half * share) / Math.sin(half);
  const [c, s] = [Math.cos(half * (1 - share)), -Math.sin(half * (1 - share))];
  const [vx, vy] = [segment.to.x - segment.from.x, segment.to.y - segment.from.y];
  return {
    x: segment.from.x + reach * (c * vx - s * vy),
    y: segment.from.y + reach * (s * vx + c * vy),
  };
}

/** The direction of travel at a share of a segment's length, of unit length; along x where the segment has none. */
export function directionOn(segment: Segment, share: number): Point {
  const [vx, vy] = [segment.to.x - segment.from.x, segment.to.y - segment.from.y];
  const chord = Math.hypot(vx, vy);
  if (chord === 0) return { x: 1, y: 0 };
  const turn = segment.kind === "arc" ? segment.sweep * (share - 0.5) : 0;
  const [c, s] = [Math.cos(turn) / chord, Math.sin(turn) / chord];
  return { x: c * vx - s * vy, y: s * vx + c * vy };
}

/** The share of a segment's length at which it is nearest to a place, from 0 to 1; the start where all are equally near. */
export function nearestShare(segment: Segment, place: Point): number {
  if (segment.kind === "arc") return nearestOnArc(segment, place);
  const [vx, vy] = [segment.to.x - segment.from.x, segment.to.y - segment.from.y];
  const square = vx * vx + vy * vy;
  if (square === 0) return 0;
  const share = ((place.x - segment.from.x) * vx + (place.y - segment.from.y) * vy) / square;
  return Math.min(1, Math.max(0, share));
}

/** In axes at the arc's middle, along it and toward its centre. */
function nearestOnArc(arc: Arc, place: Point): number {
  const along = directionOn(arc, 0.5);
  const middle = pointOn(arc, 0.5);
  const side = Math.sign(arc.sweep);
  const [dx, dy] = [place.x - middle.x, place.y - middle.y];
  const forward = along.x * dx + along.y * dy;
  const inward = side * (along.x * dy - along.y * dx);
  const share = 0.5 + Math.atan2(forward, arc.radius - inward) / Math.abs(arc.sweep);
  if (share >= 0 && share <= 1) return share;
  const toStart = Math.hypot(place.x - arc.from.x, place.y - arc.from.y);
  return toStart <= Math.hypot(place.x - arc.to.x, place.y - arc.to.y) ? 0 : 1;
}

/** The distance from a place to the nearest of some lines and arcs, mm; exact for arcs, infinite where there is none. */
export function distanceTo(segments: readonly Segment[], place: Point): number {
  return Math.min(
    ...segments.map((segment) => {
      const { x, y } = pointOn(segment, nearestShare(segment, place));
      return Math.hypot(place.x - x, place.y - y);
    }),
  );
}
