import Flatbush from "flatbush";
import { polygonArea, sharedPolygon } from "./shared-polygon.ts";
import type { TriangleMesh } from "./triangle-mesh.ts";
import { boxOfMesh, sharedBox, type Triangle, trianglesIn } from "./triangles-in.ts";
import { between, cross, dot, type Vec3 } from "./vec3.ts";

/**
 * How the faces of two meshes lie to each other where they face each other nearly flat: the area that they share (mm²), the angle
 * between them as a whole (degrees), and how far they are apart or in each other at least and at most (mm). Nothing is faced where the area is 0.
 */
export type Facing = {
  readonly area: number;
  readonly angle: number;
  readonly least: number;
  readonly apart: number;
};

const nothing: Facing = { area: 0, angle: 0, least: 0, apart: 0 };

/** Faces that turn from each other by more than this, degrees, don't belong together. */
const turned = 1;

/** How two meshes face each other within `reach` (mm): farther apart or deeper in each other isn't looked for. */
export function facing(first: TriangleMesh, second: TriangleMesh, reach: number): Facing {
  const box = sharedBox(boxOfMesh(first), boxOfMesh(second), reach);
  const [ours, theirs] = [trianglesIn(first, box), trianglesIn(second, box)];
  if (ours.length === 0 || theirs.length === 0) return nothing;
  const index = new Flatbush(theirs.length);
  for (const { a, b, c } of theirs)
    index.add(
      Math.min(a.x, b.x, c.x),
      Math.min(a.z, b.z, c.z),
      Math.max(a.x, b.x, c.x),
      Math.max(a.z, b.z, c.z),
    );
  index.finish();
  const sums = { area: 0, least: reach, apart: 0 };
  const [mine, other] = [nowhere(), nowhere()];
  for (const one of ours) {
    const { a, b, c } = one;
    const found = index.search(
      ...([Math.min(a.x, b.x, c.x) - reach, Math.min(a.z, b.z, c.z) - reach] as const),
      ...([Math.max(a.x, b.x, c.x) + reach, Math.max(a.z, b.z, c.z) + reach] as const),
    );
    for (const j of found) {
      const two = theirs[j]!;
      const shared = sharedFace(one, two, reach);
      if (shared === undefined) continue;
      sums.area += shared.area;
      sums.least = Math.min(sums.least, shared.least);
      sums.apart = Math.max(sums.apart, shared.apart);
      add(mine, one.normal, shared.area);
      add(other, two.normal, -shared.area);
    }
  }
  return sums.area > 0 ? { ...sums, angle: angleBetween(mine, other) } : nothing;
}

type Sum = { x: number; y: number; z: number };

function nowhere(): Sum {
  return { x: 0, y: 0, z: 0 };
}

function add(sum: Sum, { x, y, z }: Vec3, weight: number): void {
  sum.x += x * weight;
  sum.y += y * weight;
  sum.z += z * weight;
}

function angleBetween(a: Vec3, b: Vec3): number {
  const across = cross(a, b);
  return (Math.atan2(Math.hypot(across.x, across.y, across.z), dot(a, b)) * 180) / Math.PI;
}

const opposed = -Math.cos((turned * Math.PI) / 180);

/** A share of area under this, mm², is a sliver, whose own direction says nothing. */
const sliver = 1e-4;

/** The area that two triangles share, seen along the first one's normal, and how far the second is off the first over it. */
function sharedFace(first: Triangle, second: Triangle, reach: number): Omit<Facing, "angle"> | undefined {
  if (dot(first.normal, second.normal) > opposed) return undefined;
  const { corners, u, v } = sharedPolygon(first, second);
  if (corners.length < 3) return undefined;
  const area = polygonArea(corners);
  if (area < sliver) return undefined;
  // Heights of the second's plane over the first's, at the corners of what they share.
  const off = between(first.a, second.a);
  const [nu, nv, nw] = [dot(second.normal, u), dot(second.normal, v), dot(second.normal, first.normal)];
  const level = dot(off, second.normal);
  const heights = corners.map(({ x, y }) => Math.abs((level - x * nu - y * nv) / nw));
  // Where they run apart beyond the reach they are no longer looked at together.
  const least = Math.min(...heights);
  return least > reach ? undefined : { area, least, apart: Math.min(reach, Math.max(...heights)) };
}
