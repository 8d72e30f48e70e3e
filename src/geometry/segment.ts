import type { Path } from "./path.ts";
import type { Point } from "./point.ts";
import { tolerance } from "./tolerance.ts";

/** A straight piece of a path from `from` to `to`, mm. */
export type Line = { readonly kind: "line"; readonly from: Point; readonly to: Point };

/**
 * A piece of a circle, mm. `start` and `sweep` are radians; `sweep` is positive counter-clockwise and never more than
 * half a circle in size.
 */
export type Arc = {
  readonly kind: "arc";
  readonly from: Point;
  readonly to: Point;
  readonly centre: Point;
  readonly radius: number;
  readonly start: number;
  readonly sweep: number;
};

/** A line or an arc. */
export type Segment = Line | Arc;

/**
 * The line or arc between two points.
 *
 * `bulge` is tan(sweep / 4), positive counter-clockwise. A bulge of 0, or one too small to move the middle of the chord
 * by a representable amount, gives a line. Two equal points give a line of no length.
 */
export function segmentBetween(from: Point, to: Point, bulge: number): Segment {
  const dx = to.x - from.x;
  const dy = to.y - from.y;
  const chord = Math.hypot(dx, dy);
  if (bulge === 0 || chord === 0 || Math.abs(bulge) * chord < tolerance.straight)
    return { kind: "line", from, to };
  const sweep = 4 * Math.atan(bulge);
  const radius = (chord * (1 + bulge * bulge)) / (4 * Math.abs(bulge));
  const aside = (1 - bulge * bulge) / (4 * bulge);
  const centre = { x: (from.x + to.x) / 2 - dy * aside, y: (from.y + to.y) / 2 + dx * aside };
  const start = Math.atan2(from.y - centre.y, from.x - centre.x);
  return { kind: "arc", from, to, centre, radius, start, sweep };
}

/** The segments of a path in order; a closed path has as many as points, an open one has one fewer. */
export function segmentsOf(path: Path): Segment[] {
  const { points } = path;
  const count = path.closed ? points.length : points.length - 1;
  const segments: Segment[] = [];
  for (let i = 0; i < count; i++) {
    const from = points[i]!;
    segments.push(segmentBetween(from, points[(i + 1) % points.length]!, from.bulge));
  }
  return segments;
}

/** The length of a line or arc, mm. */
export function segmentLength(segment: Segment): number {
  if (segment.kind === "arc") return segment.radius * Math.abs(segment.sweep);
  return Math.hypot(segment.to.x - segment.from.x, segment.to.y - segment.from.y);
}
