import type { Path } from "./path.ts";
import { type Arc, segmentLength, segmentsOf } from "./segment.ts";

/** The smallest upright rectangle round something, mm. */
export type Extents = {
  readonly minX: number;
  readonly minY: number;
  readonly maxX: number;
  readonly maxY: number;
};

/** The length of a path along its lines and arcs, mm; exact. A path of fewer than two points has none. */
export function pathLength(path: Path): number {
  return segmentsOf(path).reduce((sum, segment) => sum + segmentLength(segment), 0);
}

/**
 * The area inside a closed path, mm²: positive counter-clockwise, negative clockwise; exact for arcs.
 *
 * By Green's theorem, half the integral of x dy - y dx along the path. An open path is measured as if a line closed it.
 * A path that crosses itself gives the sum by winding.
 */
export function signedArea(path: Path): number {
  let twice = 0;
  const segments = segmentsOf({ ...path, closed: true });
  for (const segment of segments) {
    twice += segment.from.x * segment.to.y - segment.to.x * segment.from.y;
    if (segment.kind === "arc") twice += segment.radius ** 2 * (segment.sweep - Math.sin(segment.sweep));
  }
  return twice / 2;
}

/** The extents of one or more paths, mm, with the bulging of arcs; `undefined` where there is no point at all. */
export function extentsOf(paths: readonly Path[]): Extents | undefined {
  let minX = Number.POSITIVE_INFINITY;
  let minY = Number.POSITIVE_INFINITY;
  let maxX = Number.NEGATIVE_INFINITY;
  let maxY = Number.NEGATIVE_INFINITY;
  const take = (x: number, y: number) => {
    minX = Math.min(minX, x);
    minY = Math.min(minY, y);
    maxX = Math.max(maxX, x);
    maxY = Math.max(maxY, y);
  };
  for (const path of paths) {
    for (const { x, y } of path.points) take(x, y);
    for (const segment of segmentsOf(path)) {
      if (segment.kind === "arc") for (const { x, y } of quadrantPoints(segment)) take(x, y);
    }
  }
  return minX > maxX ? undefined : { minX, minY, maxX, maxY };
}

/** How far two boxes are apart, mm; 0 where they overlap. */
export function extentsApart(p: Extents, q: Extents): number {
  return Math.hypot(
    Math.max(0, p.minX - q.maxX, q.minX - p.maxX),
    Math.max(0, p.minY - q.maxY, q.minY - p.maxY),
  );
}

/** The places where an arc runs along an axis: right, top, left and bottom of its circle, where it passes them. */
function quadrantPoints(arc: Arc): { x: number; y: number }[] {
  const low = Math.min(arc.start, arc.start + arc.sweep);
  const high = Math.max(arc.start, arc.start + arc.sweep);
  const places = [];
  for (let quarter = Math.ceil(low / (Math.PI / 2)); quarter * (Math.PI / 2) <= high; quarter++) {
    const [ux, uy] = [
      [1, 0],
      [0, 1],
      [-1, 0],
      [0, -1],
    ][((quarter % 4) + 4) % 4] as [number, number];
    places.push({ x: arc.centre.x + arc.radius * ux, y: arc.centre.y + arc.radius * uy });
  }
  return places;
}
