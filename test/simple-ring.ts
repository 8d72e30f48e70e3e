import type { Path } from "../src/geometry/path.ts";

type Place = readonly [x: number, y: number];

/** A closed path as a polygon of chords, by trigonometry of its own: a test may not lean on what it tests. */
export function polygonOf({ points }: Path, pieces = 6): Place[] {
  return points.flatMap((p, i): Place[] => {
    const q = points[(i + 1) % points.length]!;
    if (p.bulge === 0) return [[p.x, p.y]];
    const half = 2 * Math.atan(p.bulge);
    const [mx, my, dx, dy] = [(p.x + q.x) / 2, (p.y + q.y) / 2, (q.x - p.x) / 2, (q.y - p.y) / 2];
    const [cx, cy] = [mx - dy / Math.tan(half), my + dx / Math.tan(half)];
    return Array.from({ length: pieces }, (_, k): Place => {
      const turn = (2 * half * k) / pieces;
      const [x, y] = [p.x - cx, p.y - cy];
      return [cx + x * Math.cos(turn) - y * Math.sin(turn), cy + x * Math.sin(turn) + y * Math.cos(turn)];
    });
  });
}

/** How many pairs of a polygon's sides cross, neighbours apart: none for a simple ring. */
export function crossings(ring: readonly Place[]): number {
  const side = (a: Place, b: Place, p: Place) =>
    (b[0] - a[0]) * (p[1] - a[1]) - (b[1] - a[1]) * (p[0] - a[0]);
  const n = ring.length;
  let count = 0;
  for (let i = 0; i < n; i++) {
    const [a, b] = [ring[i]!, ring[(i + 1) % n]!];
    for (let k = i + 2; k < n; k++) {
      if (i === 0 && k === n - 1) continue;
      const [c, d] = [ring[k]!, ring[(k + 1) % n]!];
      if (Math.max(a[0], b[0]) < Math.min(c[0], d[0]) || Math.max(c[0], d[0]) < Math.min(a[0], b[0]))
        continue;
      if (side(a, b, c) * side(a, b, d) < 0 && side(c, d, a) * side(c, d, b) < 0) count++;
    }
  }
  return count;
}

/** Whether a place lies inside a polygon, by counting the sides to its right. */
export function inside(ring: readonly Place[], [x, y]: Place): boolean {
  return ring.reduce((is, [ax, ay], i) => {
    const [bx, by] = ring[(i + 1) % ring.length]!;
    return ay > y !== by > y && x < ax + ((y - ay) * (bx - ax)) / (by - ay) ? !is : is;
  }, false);
}
