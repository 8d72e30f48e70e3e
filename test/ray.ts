import type { TriangleMesh } from "../src/geometry/solid/triangle-mesh.ts";

type Place = readonly [x: number, y: number, z: number];

const less = (a: Place, b: Place): Place => [a[0] - b[0], a[1] - b[1], a[2] - b[2]];
const dot = (a: Place, b: Place) => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
const cross = (a: Place, b: Place): Place => [
  a[1] * b[2] - a[2] * b[1],
  a[2] * b[0] - a[0] * b[2],
  a[0] * b[1] - a[1] * b[0],
];

/** How far along a ray (in lengths of its way) it passes through a mesh's triangles, in rising order: each hit solved for the triangle's own two shares. */
export function hits({ positions, triangles }: TriangleMesh, from: Place, way: Place): number[] {
  const found: number[] = [];
  const corner = (t: number): Place => {
    const at = 3 * triangles[t]!;
    return [positions[at]!, positions[at + 1]!, positions[at + 2]!];
  };
  for (let t = 0; t < triangles.length; t += 3) {
    const [a, b, c] = [corner(t), corner(t + 1), corner(t + 2)];
    const [ab, ac, away] = [less(b, a), less(c, a), less(from, a)];
    const p = cross(way, ac);
    const whole = dot(ab, p);
    if (Math.abs(whole) < 1e-12) continue;
    const u = dot(away, p) / whole;
    const q = cross(away, ab);
    const v = dot(way, q) / whole;
    if (u < -1e-9 || v < -1e-9 || u + v > 1 + 1e-9) continue;
    found.push(dot(ac, q) / whole);
  }
  found.sort((one, other) => one - other);
  return found.filter((at, i) => i === 0 || at - found[i - 1]! > 1e-6);
}
