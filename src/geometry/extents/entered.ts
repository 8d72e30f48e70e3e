import type { Extents } from "../measure.ts";

/**
 * Whether a straight line between two places enters an upright rectangle or touches it: clipped by its four sides in turn, something of it is left,
 * be it a point (Liang and Barsky).
 */
export function entered(box: Extents, x1: number, y1: number, x2: number, y2: number): boolean {
  let [from, to] = [0, 1];
  for (const [start, way, low, high] of [
    [x1, x2 - x1, box.minX, box.maxX],
    [y1, y2 - y1, box.minY, box.maxY],
  ] as const) {
    if (way === 0) {
      if (start < low || start > high) return false;
      continue;
    }
    const [s, t] = [(low - start) / way, (high - start) / way];
    from = Math.max(from, Math.min(s, t));
    to = Math.min(to, Math.max(s, t));
  }
  return from <= to;
}
