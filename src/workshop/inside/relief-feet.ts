import type { Path } from "../../geometry/path.ts";
import type { Point } from "../../geometry/point.ts";
import { segmentsOf } from "../../geometry/segment.ts";

/** How near to half a circle an arc sweeps that frees a corner, radians. */
const within = 1e-4;

/** Where a half circle that frees a recess's corner meets one of its sides, and its radius, mm. */
export type ReliefFoot = { readonly at: Point; readonly radius: number };

/**
 * Where the half circles that free a recess's corners meet its sides: there the kept wood has a corner that turns by 45 degrees, and nothing bears on
 * it. A half circle that has been parted has none.
 */
export function reliefFeet(outline: Path): ReliefFoot[] {
  return segmentsOf(outline).flatMap((piece) =>
    piece.kind === "arc" && Math.abs(Math.abs(piece.sweep) - Math.PI) < within
      ? [piece.from, piece.to].map((at) => ({ at, radius: piece.radius }))
      : [],
  );
}

/** How much a corner beside a relief may come out rounded, mm: what shaped wood is held to (G: default, confirm). */
const mostRounded = 0.2;

/** How far a guided edge may lie inside the kept wood for the corners beside a relief of a radius to be rounded by no more than that, mm. */
export function reliefOffset(radius: number): number {
  let [low, high] = [0, 100 * radius];
  for (let i = 0; i < 60; i++) {
    const middle = (low + high) / 2;
    if (roundedBeside(radius, middle) <= mostRounded) low = middle;
    else high = middle;
  }
  return low;
}

/**
 * How deep a corner beside a relief is rounded by a circle that rolls inside the wood, both by radius, mm: it touches the side, and the half circle from
 * without. From the foot, its middle lies as far along the side as that leaves it and its radius under it.
 */
function roundedBeside(relief: number, rolled: number): number {
  const lean = relief * Math.SQRT1_2;
  const along = Math.sqrt((relief + rolled) ** 2 - (rolled + lean) ** 2) - lean;
  return Math.hypot(along, rolled) - rolled;
}
