import type { Path } from "../path.ts";
import type { Point } from "../point.ts";
import { tolerance } from "../tolerance.ts";
import { windingAt } from "../winding-at.ts";
import { nearestPlace } from "./nearest-place.ts";

/**
 * How often a closed path runs round a place, counter-clockwise counted positive; exact for arcs.
 *
 * An open path is taken as if a line closed it. On the path itself the number means nothing: ask `whereabouts`.
 */
export function winding(path: Path, place: Point): number {
  return windingAt([path], place);
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
