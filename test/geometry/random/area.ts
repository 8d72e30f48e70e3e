import type { Path } from "../../../src/geometry/path.ts";
import { flat } from "./flat.ts";

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

/** The length of paths along a flattening at 0.001 mm. */
export function lengthOf(paths: readonly Path[]): number {
  let length = 0;
  for (const path of paths) {
    const places = flat(path, 0.001);
    places.forEach(([x, y], i) => {
      const [u, v] = places[(i + 1) % places.length]!;
      if (path.closed || i + 1 < places.length) length += Math.hypot(u - x, v - y);
    });
  }
  return length;
}
