import type { Path } from "../../../src/geometry/path.ts";
import { spaced } from "./flat.ts";

/** The distance from a point to the nearest point of some paths, mm, by angles about each arc's own centre. */
export function distanceTo(paths: readonly Path[], x: number, y: number): number {
  let least = Number.POSITIVE_INFINITY;
  for (const { closed, points } of paths) {
    for (let i = 0; i < (closed ? points.length : points.length - 1); i++) {
      const from = points[i]!;
      least = Math.min(least, toSegment(from, points[(i + 1) % points.length]!, from.bulge, x, y));
    }
  }
  return least;
}

function toSegment(
  from: { x: number; y: number },
  to: { x: number; y: number },
  bulge: number,
  x: number,
  y: number,
): number {
  const [dx, dy] = [to.x - from.x, to.y - from.y];
  const ends = Math.min(Math.hypot(x - from.x, y - from.y), Math.hypot(x - to.x, y - to.y));
  const chord = Math.hypot(dx, dy);
  if (chord === 0) return ends;
  if (bulge === 0) {
    const share = ((x - from.x) * dx + (y - from.y) * dy) / chord ** 2;
    if (share <= 0 || share >= 1) return ends;
    return Math.hypot(x - from.x - share * dx, y - from.y - share * dy);
  }
  const sweep = 4 * Math.atan(bulge);
  const radius = chord / (2 * Math.sin(sweep / 2));
  const rise = radius * Math.cos(sweep / 2);
  const cx = (from.x + to.x) / 2 - (rise * dy) / chord;
  const cy = (from.y + to.y) / 2 + (rise * dx) / chord;
  const start = Math.atan2(from.y - cy, from.x - cx);
  const turn = Math.sign(sweep);
  const passed =
    ((((Math.atan2(y - cy, x - cx) - start) * turn) % (2 * Math.PI)) + 2 * Math.PI) % (2 * Math.PI);
  if (passed > Math.abs(sweep)) return ends;
  return Math.min(ends, Math.abs(Math.hypot(x - cx, y - cy) - Math.abs(radius)));
}

/** How far the farthest and the nearest of evenly spaced points of some paths lie from others, mm. */
export function spread(
  of: readonly Path[],
  from: readonly Path[],
  parts = 4,
): { least: number; most: number } {
  let least = Number.POSITIVE_INFINITY;
  let most = 0;
  for (const { closed, points } of of) {
    for (let i = 0; i < (closed ? points.length : points.length - 1); i++) {
      const start = points[i]!;
      for (const [x, y] of spaced(start, points[(i + 1) % points.length]!, start.bulge, parts)) {
        const distance = distanceTo(from, x, y);
        least = Math.min(least, distance);
        most = Math.max(most, distance);
      }
    }
  }
  return { least, most };
}
