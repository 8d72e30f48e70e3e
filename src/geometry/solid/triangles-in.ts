import type { TriangleMesh } from "./triangle-mesh.ts";
import { between, cross, dot, type Vec3 } from "./vec3.ts";

/** A triangle of a mesh and its unit normal. */
export type Triangle = { readonly a: Vec3; readonly b: Vec3; readonly c: Vec3; readonly normal: Vec3 };

/** An upright box in space, mm. */
export type Box3 = { readonly least: Vec3; readonly most: Vec3 };

const axes = ["x", "y", "z"] as const;

/** The triangles of a mesh that come near a box (all of them without one); those without an area have no normal and are left out. */
export function trianglesIn({ positions, triangles }: TriangleMesh, box?: Box3): Triangle[] {
  const corner = (i: number): Vec3 => {
    const at = 3 * triangles[i]!;
    return { x: positions[at]!, y: positions[at + 1]!, z: positions[at + 2]! };
  };
  const out: Triangle[] = [];
  for (let t = 0; t < triangles.length; t += 3) {
    const [a, b, c] = [corner(t), corner(t + 1), corner(t + 2)];
    if (box !== undefined && apart(a, b, c, box)) continue;
    const n = cross(between(a, b), between(a, c));
    const length = Math.sqrt(dot(n, n));
    if (length > 0) out.push({ a, b, c, normal: { x: n.x / length, y: n.y / length, z: n.z / length } });
  }
  return out;
}

function apart(a: Vec3, b: Vec3, c: Vec3, { least, most }: Box3): boolean {
  return axes.some((k) => {
    return Math.min(a[k], b[k], c[k]) > most[k] || Math.max(a[k], b[k], c[k]) < least[k];
  });
}

/** The box round a mesh. */
export function boxOfMesh({ positions }: TriangleMesh): Box3 {
  const [least, most] = [
    [Infinity, Infinity, Infinity],
    [-Infinity, -Infinity, -Infinity],
  ] as const;
  const [low, high] = [[...least], [...most]];
  for (let i = 0; i < positions.length; i++) {
    const value = positions[i]!;
    if (value < low[i % 3]!) low[i % 3] = value;
    if (value > high[i % 3]!) high[i % 3] = value;
  }
  const of = ([x, y, z]: number[]): Vec3 => ({ x: x!, y: y!, z: z! });
  return { least: of(low), most: of(high) };
}

/** What two boxes have in common, each side moved out by `by` (mm); its least may lie over its most. */
export function sharedBox(a: Box3, b: Box3, by: number): Box3 {
  const take = (pick: (k: (typeof axes)[number]) => number): Vec3 => {
    return { x: pick("x"), y: pick("y"), z: pick("z") };
  };
  return {
    least: take((k) => Math.max(a.least[k], b.least[k]) - by),
    most: take((k) => Math.min(a.most[k], b.most[k]) + by),
  };
}

/** How far two boxes are apart, mm; 0 where they meet. */
export function boxesApart(a: Box3, b: Box3): number {
  return Math.hypot(...axes.map((k) => Math.max(0, a.least[k] - b.most[k], b.least[k] - a.most[k])));
}
