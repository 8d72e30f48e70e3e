import { offArc } from "../off-arc.ts";
import type { Path } from "../path.ts";
import type { Point } from "../point.ts";
import { type Segment, segmentsOf } from "../segment.ts";
import { tolerance } from "../tolerance.ts";
import { nearestPlace } from "./nearest-place.ts";
import { directionOn } from "./segment-places.ts";

/**
 * How often a closed path runs round a place, counter-clockwise counted positive; exact for arcs.
 *
 * The sum of the angles under which the place sees the segments pass. An open path is taken as if a line closed it. On
 * the path itself the number means nothing: ask `whereabouts`.
 */
export function winding(path: Path, place: Point): number {
  const sum = segmentsOf({ ...path, closed: true }).reduce((angle, s) => angle + seenAngle(s, place), 0);
  return Math.round(sum / (2 * Math.PI)) + 0; // never -0
}

/**
 * Whether a place is inside, outside or on a closed path, within `tolerance.exact` of it; inside is what the path runs
 * round an odd number of times. An open path is taken as if a line closed it.
 */
export function whereabouts(path: Path, place: Point): "inside" | "outside" | "on" {
  const closed = { ...path, closed: true };
  const nearest = nearestPlace(closed, place);
  if (nearest.kind === "ok" && nearest.distance <= tolerance.exact) return "on";
  return winding(closed, place) % 2 === 0 ? "outside" : "inside";
}

/** The angle (radians) through which a place turns to watch something run along a segment. */
function seenAngle(segment: Segment, place: Point): number {
  const [ax, ay] = [segment.from.x - place.x, segment.from.y - place.y];
  const [bx, by] = [segment.to.x - place.x, segment.to.y - place.y];
  const angle = Math.atan2(ax * by - ay * bx, ax * bx + ay * by);
  if (segment.kind === "line") return angle;
  const { radius, sweep } = segment;
  const leaving = directionOn(segment, 0);
  const within = offArc(-ax, -ay, leaving.x, leaving.y, Math.sign(sweep) / radius) * Math.sign(sweep) > 0;
  if (!within) return angle;
  if (sweep > 0) return angle > 0 ? angle : angle + 2 * Math.PI;
  return angle < 0 ? angle : angle - 2 * Math.PI;
}
