import type { TriangleMesh } from "./triangle-mesh.ts";
import type { Vec3 } from "./vec3.ts";

/** Volume (mm³, negative inside out), centre of volume and extents (mm) of a solid. */
export type SolidMeasures = {
  readonly volume: number;
  readonly centre: Vec3;
  readonly least: Vec3;
  readonly most: Vec3;
};

/**
 * Measures what a closed mesh bounds, as a sum of tetrahedra from the middle of its extents. Without vertices all is 0;
 * without volume the centre is that middle.
 */
export function meshMeasures({ positions, triangles }: TriangleMesh): SolidMeasures {
  const least = [Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY];
  const most = [Number.NEGATIVE_INFINITY, Number.NEGATIVE_INFINITY, Number.NEGATIVE_INFINITY];
  for (let i = 0; i < positions.length; i++) {
    least[i % 3] = Math.min(least[i % 3]!, positions[i]!);
    most[i % 3] = Math.max(most[i % 3]!, positions[i]!);
  }
  if (positions.length === 0)
    return { volume: 0, centre: vec([0, 0, 0]), least: vec([0, 0, 0]), most: vec([0, 0, 0]) };
  const middle = least.map((low, i) => (low + most[i]!) / 2);
  const [mx, my, mz] = middle as [number, number, number];
  let volume = 0;
  let [x, y, z] = [0, 0, 0];
  for (let t = 0; t < triangles.length; t += 3) {
    const [i, j, k] = [3 * triangles[t]!, 3 * triangles[t + 1]!, 3 * triangles[t + 2]!];
    const [ax, ay, az] = [positions[i]! - mx, positions[i + 1]! - my, positions[i + 2]! - mz];
    const [bx, by, bz] = [positions[j]! - mx, positions[j + 1]! - my, positions[j + 2]! - mz];
    const [cx, cy, cz] = [positions[k]! - mx, positions[k + 1]! - my, positions[k + 2]! - mz];
    const six = ax * (by * cz - bz * cy) + ay * (bz * cx - bx * cz) + az * (bx * cy - by * cx);
    volume += six / 6;
    x += (six * (ax + bx + cx)) / 24;
    y += (six * (ay + by + cy)) / 24;
    z += (six * (az + bz + cz)) / 24;
  }
  const centre = volume === 0 ? middle : [mx + x / volume, my + y / volume, mz + z / volume];
  return { volume, centre: vec(centre), least: vec(least), most: vec(most) };
}

function vec([x, y, z]: readonly number[]): Vec3 {
  return { x: x!, y: y!, z: z! };
}
