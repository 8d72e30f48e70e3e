import type { Path } from "../../geometry/path.ts";
import { directionOn } from "../../geometry/path-measures/segment-places.ts";
import type { Point } from "../../geometry/point.ts";
import { segmentLength, segmentsOf } from "../../geometry/segment.ts";
import { step } from "../../step/step.ts";
import type { Bends } from "../guided/bends.ts";
import { leastPlay, plungeIn } from "./plunge.ts";
import { reliefFeet, reliefOffset } from "./relief-feet.ts";

/** Turns under this are drawing noise and no corner, radians. */
const straight = 1e-3;

/**
 * How tightly the wood round some recesses bends: the least radius of what is hollow for the cutter, 0 at a corner, or what its narrowness asks for; and how far a guided edge may lie inside
 * the wood where that bends toward the cutter: its least radius, or beside a relief what rounds it by as much as is allowed; null where there is none.
 */
export const insideBends = step("inside.bends", 1, (recesses: readonly Path[]): Bends => {
  const bends = recesses.map(bendsIn);
  const least = (all: readonly (number | null)[]) => {
    const found = all.filter((one) => one !== null);
    return found.length === 0 ? null : Math.min(...found);
  };
  return {
    hollow: least(bends.map(({ hollow }) => hollow)),
    outward: least(bends.map(({ outward }) => outward)),
  };
});

/** The bends of one counter-clockwise recess: what turns to the left is hollow. */
function bendsIn(recess: Path): Bends {
  const pieces = segmentsOf(recess).filter((piece) => segmentLength(piece) > 0);
  const feet = reliefFeet(recess);
  const hollow: number[] = [];
  const outward: number[] = [];
  for (const [i, piece] of pieces.entries()) {
    if (piece.kind === "arc") (piece.sweep > 0 ? hollow : outward).push(piece.radius);
    const turn = turnBetween(directionOn(piece, 1), directionOn(pieces[(i + 1) % pieces.length]!, 0));
    if (turn > straight) hollow.push(0);
    if (turn >= -straight) continue;
    const foot = feet.find(({ at }) => isSame(at, piece.to));
    outward.push(foot === undefined ? 0 : reliefOffset(foot.radius));
  }
  // A cutter as wide as a slot would climb along one of its sides, and its guide would have nowhere to stand free.
  const wide = Math.max(0, plungeIn(recess, leastPlay).room);
  return {
    hollow: Math.min(wide, ...hollow),
    outward: outward.length === 0 ? null : Math.min(...outward),
  };
}

function turnBetween(a: Point, b: Point): number {
  return Math.atan2(a.x * b.y - a.y * b.x, a.x * b.x + a.y * b.y);
}

function isSame(a: Point, b: Point): boolean {
  return Math.hypot(a.x - b.x, a.y - b.y) < 1e-6;
}
