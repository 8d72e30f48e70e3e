import type { Point } from "../point.ts";
import { type Straight, segmentsApart } from "./segments-apart.ts";
import type { Vec3 } from "./vec3.ts";

/** All that lies within a polygon and no higher than `top`, mm: a post without a foot. */
export type Post = { readonly corners: readonly Point[]; readonly top: number };

/**
 * How far a straight piece stays from a post, mm; where it goes into it, how far it comes under the post's top there, negative. A post of
 * fewer than three corners has no inside, and is as far as its edges.
 */
export function clearOfPost({ corners, top }: Post, { from, to }: Straight): number {
  const lowered: Straight = { from: { ...from, z: from.z - top }, to: { ...to, z: to.z - top } };
  let least = Number.POSITIVE_INFINITY;
  for (const part of partsInside(corners, lowered)) least = Math.min(least, part.from.z, part.to.z);
  if (least < 0) return least;
  // Beside the post and under its top only the way along the ground counts.
  for (const part of flattened(lowered)) {
    const [minX, maxX] = [Math.min(part.from.x, part.to.x), Math.max(part.from.x, part.to.x)];
    const [minY, maxY] = [Math.min(part.from.y, part.to.y), Math.max(part.from.y, part.to.y)];
    let a = corners.at(-1)!;
    for (const b of corners) {
      const besideX = Math.max(minX - Math.max(a.x, b.x), Math.min(a.x, b.x) - maxX);
      const besideY = Math.max(minY - Math.max(a.y, b.y), Math.min(a.y, b.y) - maxY);
      if (Math.max(besideX, besideY) < least)
        least = Math.min(least, segmentsApart(part, { from: { ...a, z: 0 }, to: { ...b, z: 0 } }));
      a = b;
    }
  }
  return least;
}

/** A piece in at most two, what lies under 0 laid flat. */
function flattened({ from, to }: Straight): Straight[] {
  if (from.z >= 0 && to.z >= 0) return [{ from, to }];
  const flat = (place: Vec3): Vec3 => ({ ...place, z: Math.max(0, place.z) });
  if (from.z <= 0 && to.z <= 0) return [{ from: flat(from), to: flat(to) }];
  const middle = along(from, to, from.z / (from.z - to.z));
  return [
    { from: flat(from), to: flat(middle) },
    { from: flat(middle), to: flat(to) },
  ];
}

function along(from: Vec3, to: Vec3, share: number): Vec3 {
  const at = (axis: "x" | "y" | "z") => from[axis] + (to[axis] - from[axis]) * share;
  return { x: at("x"), y: at("y"), z: at("z") };
}

/** What of a piece lies over the inside of a polygon. */
function partsInside(corners: readonly Point[], { from, to }: Straight): Straight[] {
  const [dx, dy] = [to.x - from.x, to.y - from.y];
  const shares: number[] = [];
  let a = corners.at(-1)!;
  for (const b of corners) {
    const [ax, ay, ex, ey] = [a.x - from.x, a.y - from.y, b.x - a.x, b.y - a.y];
    a = b;
    const across = dx * ey - dy * ex;
    if (across === 0) continue;
    const share = (ax * ey - ay * ex) / across;
    const onEdge = (ax * dy - ay * dx) / across;
    if (share > 0 && share < 1 && onEdge >= 0 && onEdge <= 1) shares.push(share);
  }
  const ends = [0, ...shares.sort((a, b) => a - b), 1];
  return ends.slice(1).flatMap((end, i) => {
    const start = ends[i]!;
    const middle = along(from, to, (start + end) / 2);
    return within(corners, middle) ? [{ from: along(from, to, start), to: along(from, to, end) }] : [];
  });
}

/** Whether a polygon runs round a place. */
function within(corners: readonly Point[], { x, y }: Point): boolean {
  let inside = false;
  let a = corners.at(-1);
  for (const b of corners) {
    if (a !== undefined && a.y > y !== b.y > y && x < a.x + ((y - a.y) / (b.y - a.y)) * (b.x - a.x))
      inside = !inside;
    a = b;
  }
  return inside;
}
