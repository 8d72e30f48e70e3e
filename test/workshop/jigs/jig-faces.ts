import type { TriangleMesh } from "../../../src/geometry/solid/triangle-mesh.ts";
import { between, cross, dot, type Vec3 } from "../../../src/geometry/solid/vec3.ts";

/** A mesh's flat faces that look one way to within two degrees: their area and their mean normal. */
export function facing(mesh: TriangleMesh, way: Vec3): { area: number; normal: Vec3 } {
  const corner = (t: number): Vec3 => {
    const at = 3 * mesh.triangles[t]!;
    return { x: mesh.positions[at]!, y: mesh.positions[at + 1]!, z: mesh.positions[at + 2]! };
  };
  let sum: Vec3 = { x: 0, y: 0, z: 0 };
  let area = 0;
  for (let t = 0; t < mesh.triangles.length; t += 3) {
    const [a, b, c] = [corner(t), corner(t + 1), corner(t + 2)];
    const twice = cross(between(a, b), between(a, c));
    const size = Math.hypot(twice.x, twice.y, twice.z);
    if (size < 1e-9 || dot(twice, way) / size < Math.cos((2 * Math.PI) / 180)) continue;
    area += size / 2;
    sum = { x: sum.x + twice.x, y: sum.y + twice.y, z: sum.z + twice.z };
  }
  const length = Math.hypot(sum.x, sum.y, sum.z);
  return { area, normal: { x: sum.x / length, y: sum.y / length, z: sum.z / length } };
}

/** The angle between two directions, degrees, never negative. */
export function degreesBetween(a: Vec3, b: Vec3): number {
  const across = cross(a, b);
  return (Math.atan2(Math.hypot(across.x, across.y, across.z), dot(a, b)) * 180) / Math.PI;
}
