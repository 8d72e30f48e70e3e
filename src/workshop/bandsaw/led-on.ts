import type { Extents } from "../../geometry/measure.ts";
import type { Path, PathPoint } from "../../geometry/path.ts";
import { directionOn } from "../../geometry/path-measures/segment-places.ts";
import type { Point } from "../../geometry/point.ts";
import { reversedPath } from "../../geometry/reversed-path.ts";
import { segmentsOf } from "../../geometry/segment.ts";

/**
 * An open path led on straight past its last point, in its direction there, to the edge of a rectangle that it is in; mm. A
 * path that ends outside, or on the edge, is the same.
 */
export function ledOn(path: Path, within: Extents): Path {
  const end = path.points.at(-1)!;
  const { x, y } = directionOn(segmentsOf(path).at(-1)!, 1);
  const reach = wayOut(end, { x, y }, within);
  if (!(reach > 0 && Number.isFinite(reach))) return path;
  const led = { x: end.x + x * reach, y: end.y + y * reach, bulge: 0 };
  const before = path.points.at(-2)!;
  const kept: readonly PathPoint[] = before.bulge === 0 ? path.points.slice(0, -1) : path.points;
  return { closed: false, points: [...kept, led] };
}

/** An open path led on straight at both of its ends, as `ledOn` does at the last. */
export function ledOnBothWays(path: Path, within: Extents): Path {
  return reversedPath(ledOn(reversedPath(ledOn(path, within)), within));
}

/** How far it is from a place in a rectangle, in a direction of unit length, to the rectangle's edge, mm; 0 or less from outside. */
export function wayOut({ x, y }: Point, direction: Point, { minX, maxX, minY, maxY }: Extents): number {
  const way = (from: number, toward: number, least: number, most: number) => {
    if (Math.abs(toward) < 1e-12) return from < least || from > most ? 0 : Number.POSITIVE_INFINITY;
    return ((toward > 0 ? most : least) - from) / toward;
  };
  return Math.min(way(x, direction.x, minX, maxX), way(y, direction.y, minY, maxY));
}
