import type { Point } from "../point.ts";
import type { TriangleMesh } from "../solid/triangle-mesh.ts";
import type { View } from "./view.ts";

/** A mesh seen in a view: right, up and near of each vertex, mm. */
export type Laid = { readonly at: Float64Array; readonly mesh: TriangleMesh };

/** A grid over a view: how near what is seen in each field is, mm, and whose it is by its place in the list; nothing is infinitely far. */
export type Depths = {
  readonly minX: number;
  readonly minY: number;
  readonly field: number;
  readonly across: number;
  readonly high: number;
  readonly near: Float32Array;
  readonly whose: Int16Array;
};

/** The vertices of a mesh as a view has them. */
export function laid(mesh: TriangleMesh, { right, up, toward }: View): Laid {
  const { positions: p } = mesh;
  const at = new Float64Array(p.length);
  for (let i = 0; i < p.length; i += 3) {
    const [x, y, z] = [p[i]!, p[i + 1]!, p[i + 2]!];
    at[i] = x * right.x + y * right.y + z * right.z;
    at[i + 1] = x * up.x + y * up.y + z * up.z;
    at[i + 2] = x * toward.x + y * toward.y + z * toward.z;
  }
  return { at, mesh };
}

/** How near the meshes' fronts are in each field of a grid, `field` mm wide. */
export function depthsOf(all: readonly Laid[], field: number): Depths {
  let [minX, minY, maxX, maxY] = [Infinity, Infinity, -Infinity, -Infinity];
  for (const { at } of all) {
    for (let i = 0; i < at.length; i += 3) {
      minX = Math.min(minX, at[i]!);
      maxX = Math.max(maxX, at[i]!);
      minY = Math.min(minY, at[i + 1]!);
      maxY = Math.max(maxY, at[i + 1]!);
    }
  }
  minX -= 2 * field;
  minY -= 2 * field;
  const across = Math.ceil((maxX - minX) / field) + 2;
  const high = Math.ceil((maxY - minY) / field) + 2;
  const near = new Float32Array(across * high).fill(-Infinity);
  const whose = new Int16Array(across * high).fill(-1);
  const depths = { minX, minY, field, across, high, near, whose };
  for (const [i, one] of all.entries()) fill(depths, one, i);
  return depths;
}

function fill(
  { minX, minY, field, across, near, whose }: Depths,
  { at, mesh: { triangles } }: Laid,
  own: number,
): void {
  for (let t = 0; t < triangles.length; t += 3) {
    const [a, b, c] = [3 * triangles[t]!, 3 * triangles[t + 1]!, 3 * triangles[t + 2]!];
    // In fields from the grid's corner; a field is asked at its middle.
    const [ax, ay] = [(at[a]! - minX) / field - 0.5, (at[a + 1]! - minY) / field - 0.5];
    const [bx, by] = [(at[b]! - minX) / field - 0.5, (at[b + 1]! - minY) / field - 0.5];
    const [cx, cy] = [(at[c]! - minX) / field - 0.5, (at[c + 1]! - minY) / field - 0.5];
    const twice = (bx - ax) * (cy - ay) - (cx - ax) * (by - ay);
    if (twice <= 1e-9) continue;
    const [za, zb, zc] = [at[a + 2]!, at[b + 2]!, at[c + 2]!];
    const [low, top] = [Math.ceil(Math.min(ay, by, cy)), Math.floor(Math.max(ay, by, cy))];
    const [left, right] = [Math.ceil(Math.min(ax, bx, cx)), Math.floor(Math.max(ax, bx, cx))];
    for (let y = low; y <= top; y++) {
      for (let x = left; x <= right; x++) {
        const wa = ((bx - x) * (cy - y) - (cx - x) * (by - y)) / twice;
        const wb = ((cx - x) * (ay - y) - (ax - x) * (cy - y)) / twice;
        const wc = 1 - wa - wb;
        if (wa < -1e-9 || wb < -1e-9 || wc < -1e-9) continue;
        const z = wa * za + wb * zb + wc * zc;
        const i = y * across + x;
        if (z > near[i]!) {
          near[i] = z;
          whose[i] = own;
        }
      }
    }
  }
}

/** Whether a place of a view is seen: nothing lies in front of it by more than `slack` (mm) in every field round it. */
export function isSeen(
  { minX, minY, field, across, near }: Depths,
  x: number,
  y: number,
  z: number,
  slack: number,
): boolean {
  const [i, k] = [Math.floor((x - minX) / field), Math.floor((y - minY) / field)];
  for (let dy = -1; dy <= 1; dy++)
    for (let dx = -1; dx <= 1; dx++) if (near[(k + dy) * across + i + dx]! <= z + slack) return true;
  return false;
}

/** Whose place of a view is seen there: a mesh's place in the list, or null where nothing is. */
export function seenAt({ minX, minY, field, across, high, whose }: Depths, { x, y }: Point): number | null {
  const [i, k] = [Math.floor((x - minX) / field), Math.floor((y - minY) / field)];
  if (i < 0 || k < 0 || i >= across || k >= high) return null;
  const own = whose[k * across + i]!;
  return own < 0 ? null : own;
}

/** Of each of so many meshes the seen field that is nearest to the middle of all its seen fields; null where none is seen. */
export function midstOf({ minX, minY, field, across, high, whose }: Depths, count: number): (Point | null)[] {
  const sums = Array.from({ length: count }, () => ({ x: 0, y: 0, fields: 0 }));
  const nearest = sums.map(() => ({ away: Infinity, x: 0, y: 0 }));
  for (const round of ["sums", "nearest"] as const) {
    for (let y = 0; y < high; y++) {
      for (let x = 0; x < across; x++) {
        const own = whose[y * across + x]!;
        if (own < 0) continue;
        const sum = sums[own]!;
        if (round === "sums") {
          sum.x += x;
          sum.y += y;
          sum.fields++;
          continue;
        }
        const [dx, dy] = [x - sum.x / sum.fields, y - sum.y / sum.fields];
        const away = dx * dx + dy * dy;
        if (away < nearest[own]!.away) nearest[own] = { away, x, y };
      }
    }
  }
  return nearest.map(({ away, x, y }) =>
    away === Infinity ? null : { x: minX + (x + 0.5) * field, y: minY + (y + 0.5) * field },
  );
}

/** A surface that bends by less than this, mm over a field to either side, runs on smoothly there. */
const smooth = 0.05;

/**
 * Whether what is seen changes across a place, from one side to the other in a direction: another part, a step, or a bend. An edge between facets, or one of
 * a step that is no more than a hair, changes nothing.
 */
export function isBreak(
  { minX, minY, field, across, near, whose }: Depths,
  [x, y]: readonly [number, number],
  [nx, ny]: readonly [number, number],
): boolean {
  const at = (by: number) => {
    const [i, k] = [Math.floor((x - minX) / field + by * nx), Math.floor((y - minY) / field + by * ny)];
    return k * across + i;
  };
  const [far, one, two, beyond] = [at(-3), at(-1.5), at(1.5), at(3)];
  if (whose[one] !== whose[two]) return true;
  const [a, b, c, d] = [near[far]!, near[one]!, near[two]!, near[beyond]!];
  // The way over the middle is twice as long as those beside it.
  const over = (c - b) / 2;
  return !(Math.abs(b - a - over) < smooth && Math.abs(d - c - over) < smooth);
}
