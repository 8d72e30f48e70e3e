import type { Path } from "../../../src/geometry/path.ts";

/** The signed area within paths, mm², by the shoelace and each arc's cap; apart from what it helps to check. */
export function areaOf(paths: readonly Path[]): number {
  let twice = 0;
  for (const { points } of paths) {
    points.forEach((from, i) => {
      const to = points[(i + 1) % points.length]!;
      twice += (from.x + to.x) * (to.y - from.y);
      const sweep = 4 * Math.atan(from.bulge);
      if (sweep === 0) return;
      const radius = Math.hypot(to.x - from.x, to.y - from.y) / (2 * Math.sin(sweep / 2));
      twice += radius ** 2 * (sweep - Math.sin(sweep));
    });
  }
  return twice / 2;
}

/** The length of paths, mm: chords of lines, radius times sweep of arcs. */
export function lengthOf(paths: readonly Path[]): number {
  let length = 0;
  for (const { closed, points } of paths) {
    points.slice(0, closed ? points.length : -1).forEach((from, i) => {
      const to = points[(i + 1) % points.length]!;
      const chord = Math.hypot(to.x - from.x, to.y - from.y);
      const half = 2 * Math.atan(Math.abs(from.bulge));
      length += half === 0 ? chord : (chord * half) / Math.sin(half);
    });
  }
  return length;
}
