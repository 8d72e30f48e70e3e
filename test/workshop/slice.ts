import type { TriangleMesh } from "../../src/geometry/solid/triangle-mesh.ts";

type Place = readonly [number, number, number];

/** Where the line along z at (x, y) passes through a mesh's surface: the heights in rising order. */
export function heightsAt({ positions, triangles }: TriangleMesh, x: number, y: number): number[] {
  const heights: number[] = [];
  for (let t = 0; t < triangles.length; t += 3) {
    const [a, b, c] = [0, 1, 2].map((k): Place => {
      const at = 3 * triangles[t + k]!;
      return [positions[at]!, positions[at + 1]!, positions[at + 2]!];
    }) as [Place, Place, Place];
    const side = (p: Place, q: Place) => (q[0] - p[0]) * (y - p[1]) - (q[1] - p[1]) * (x - p[0]);
    const [u, v, w] = [side(b, c), side(c, a), side(a, b)];
    if (u + v + w === 0 || !((u >= 0 && v >= 0 && w >= 0) || (u <= 0 && v <= 0 && w <= 0))) continue;
    heights.push((u * a[2] + v * b[2] + w * c[2]) / (u + v + w));
  }
  heights.sort((a, b) => a - b);
  // An edge is of two triangles, but one place.
  return heights.filter((height, i) => i === 0 || height - heights[i - 1]! > 1e-5);
}
