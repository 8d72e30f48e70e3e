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
 * looked for any closer than that. Pairs that are further apart along an axis than the least so far are passed over, without anything made for them.
 */
export function listsApart(
  some: readonly Straight[],
  others: readonly Straight[],
  nearest = Number.POSITIVE_INFINITY,
): number {
  let least = nearest;
  for (const a of some) {
    for (const b of others) {
      if (aside(a.from.x, a.to.x, b.from.x, b.to.x) >= least) continue;
      if (aside(a.from.y, a.to.y, b.from.y, b.to.y) >= least) continue;
      if (aside(a.from.z, a.to.z, b.from.z, b.to.z) >= least) continue;
      least = Math.min(least, segmentsApart(a, b));
    }
  }
  return least;
}

/** How far two stretches of an axis, each given by its ends, are apart; negative where they overlap. */
function aside(a: number, b: number, c: number, d: number): number {
  return Math.max(Math.min(a, b) - Math.max(c, d), Math.min(c, d) - Math.max(a, b));
}
