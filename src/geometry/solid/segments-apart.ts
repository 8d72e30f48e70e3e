import { between, dot, type Vec3 } from "./vec3.ts";

/** A straight piece in space, mm; one whose ends are one place is that place. */
export type Straight = { readonly from: Vec3; readonly to: Vec3 };

/** How far two straight pieces in space are apart, mm, ends included; 0 where they cross. */
export function segmentsApart(a: Straight, b: Straight): number {
  const [d, e] = [between(a.from, a.to), between(b.from, b.to)];
  const r = between(b.from, a.from);
  const [dd, ee, de] = [dot(d, d), dot(e, e), dot(d, e)];
  const [dr, er] = [dot(d, r), dot(e, r)];
  const across = dd * ee - de * de;
  // Pieces that run alike are as near at an end as anywhere.
  let s = across > 1e-12 * dd * ee ? within((de * er - dr * ee) / across) : 0;
  let t = ee > 0 ? within((de * s + er) / ee) : 0;
  if (dd > 0) s = within((de * t - dr) / dd);
  // The nearest place on the second may have moved, since that on the first was held to its ends.
  if (ee > 0) t = within((de * s + er) / ee);
  const gap = (axis: "x" | "y" | "z") => r[axis] + s * d[axis] - t * e[axis];
  return Math.hypot(gap("x"), gap("y"), gap("z"));
}

function within(share: number): number {
  return Math.min(1, Math.max(0, share));
}

/**
 * The least that pieces of one list are apart from those of another, mm; infinite where one list is empty. What `nearest` is given as known already is not
 * looked for any closer than that. Pairs whose boxes are further apart than the least so far are passed over.
 */
export function listsApart(
  some: readonly Straight[],
  others: readonly Straight[],
  nearest = Number.POSITIVE_INFINITY,
): number {
  const boxes = others.map(boxOf);
  let least = nearest;
  for (const piece of some) {
    const box = boxOf(piece);
    for (const [i, other] of others.entries()) {
      if (boxesApart(box, boxes[i]!) < least) least = Math.min(least, segmentsApart(piece, other));
    }
  }
  return least;
}

type Box = { readonly low: Vec3; readonly high: Vec3 };

function boxOf({ from, to }: Straight): Box {
  return {
    low: { x: Math.min(from.x, to.x), y: Math.min(from.y, to.y), z: Math.min(from.z, to.z) },
    high: { x: Math.max(from.x, to.x), y: Math.max(from.y, to.y), z: Math.max(from.z, to.z) },
  };
}

function boxesApart(a: Box, b: Box): number {
  const x = Math.max(0, a.low.x - b.high.x, b.low.x - a.high.x);
  const y = Math.max(0, a.low.y - b.high.y, b.low.y - a.high.y);
  const z = Math.max(0, a.low.z - b.high.z, b.low.z - a.high.z);
  return Math.sqrt(x * x + y * y + z * z);
}
