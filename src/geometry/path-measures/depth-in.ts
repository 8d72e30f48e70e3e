import type { Path } from "../path.ts";
import type { Point } from "../point.ts";
import { segmentsOf } from "../segment.ts";
import { windingsOf } from "../winding-at.ts";
import { distancesTo } from "./distances-to.ts";

/**
 * How deep a place lies inside a closed path, mm: the distance to it, negative outside and 0 on it; exact for arcs. Inside is what the path
 * runs round an odd number of times. With `edge` the distance is taken to that alone, such as to what is cut of an outline. A path without
 * a segment is infinitely far away.
 */
export function depthIn(path: Path, place: Point, edge: Path = path): number {
  return depthsIn(path, edge)(place);
}

/** `depthIn` for many places of the same path. */
export function depthsIn(path: Path, edge: Path = path): (place: Point) => number {
  const [distanceTo, windings] = [distancesTo(segmentsOf(edge)), windingsOf([path])];
  return (place) => {
    const distance = distanceTo(place);
    return windings(place) % 2 === 0 ? -distance : distance;
  };
}
