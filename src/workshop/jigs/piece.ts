import type { Path } from "../../geometry/path.ts";
import { rectangle } from "../../geometry/rectangle.ts";
import type { Solid } from "../../geometry/solid/solid.ts";
import { printed } from "./print-rules.ts";

/**
 * A dovetail that holds two pieces of a jig together, in plan, mm: its middle across, its width at the root and at its end, and how
 * far it reaches into the next piece. It is as high as `top` over the bed, or goes right through where that is null.
 */
export type Key = {
  readonly y: number;
  readonly root: number;
  readonly end: number;
  readonly reach: number;
  readonly top: number | null;
};

/** One piece of a jig that lies along x: what of it lies between two places, mm, null where it isn't cut; which one it is, from 1, and of how many. */
export type Piece = {
  readonly from: number | null;
  readonly to: number | null;
  readonly number: number;
  readonly of: number;
};

/** A jig that is printed whole. */
export const whole: Piece = { from: null, to: null, number: 1, of: 1 };

/** Further than any jig reaches from its origin, mm. */
const beyond = 2000;

/** How far key and socket reach past the face that they stand on, mm, so that they are one with it or open to it. */
const lap = 1;

/**
 * A piece of a jig: cut off square at its ends, with the dovetail toward the next one and the socket of the one before. The socket is
 * wider than the dovetail by the slide clearance a side and at its end, so that the faces at the cut meet; the pieces are put together from above.
 */
export function pieceOf(jig: Solid, { from, to }: Piece, key: Key): Solid {
  if (from === null && to === null) return jig;
  const slab = rectangle(from ?? -beyond, -beyond, to ?? beyond, beyond);
  const kept: Solid[] = [raised(slab, null)];
  if (to !== null) kept.push(raised(dovetail(to, key, 0), key.top));
  const within: Solid = {
    kind: "intersect",
    solids: [jig, kept.length === 1 ? kept[0]! : { kind: "union", solids: kept }],
  };
  if (from === null) return within;
  const { slide } = printed.clearance;
  const top = key.top === null ? null : key.top + slide;
  return { kind: "cut", from: within, by: [raised(dovetail(from, key, slide), top)] };
}

function raised(outer: Path, top: number | null): Solid {
  return {
    ...{ kind: "extrude", outlines: [{ outer, holes: [] }] },
    ...{ base: -beyond, height: beyond + (top ?? beyond) },
  };
}

/** A dovetail's outline whose root is at x, grown by a clearance on all its sides. */
function dovetail(x: number, { y, root, end, reach }: Key, clearance: number): Path {
  const slope = (end - root) / 2 / reach;
  const aside = clearance * Math.hypot(1, slope);
  const half = (along: number) => root / 2 + slope * along + aside;
  const corner = (along: number, side: 1 | -1) => ({ x: x + along, y: y + side * half(along), bulge: 0 });
  const tip = reach + clearance;
  return { closed: true, points: [corner(-lap, -1), corner(tip, -1), corner(tip, 1), corner(-lap, 1)] };
}
