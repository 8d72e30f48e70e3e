import { step } from "../../step/step.ts";
import { type CoreFrame, intoCore } from "../core/frame.ts";
import { spreadOut } from "../strings/layout.ts";

/**
 * Lengths in mm, the slant in degrees; `heights` are the strings' centres over z = 0 at the bridge, highest string first.
 * `spread` is how far apart the outer exits lie.
 */
export type ExitsInput = {
  readonly stringLength: number;
  readonly heights: readonly number[];
  readonly diameters: readonly number[];
  readonly core: CoreFrame;
  readonly tailpieceHeight: number;
  readonly spread: number;
  readonly slant: number;
  readonly afterlength: number;
};

/**
 * Where the strings leave the tailpiece, highest string first: `along` is x' and `across` y of each exit, mm; `afterlengths` and
 * `angles` are seen from the side: from the bridge contact to the exit, mm, and degrees to z = 0, positive falling to the tail.
 */
export type TailpieceExits = {
  readonly along: readonly number[];
  readonly across: readonly number[];
  readonly afterlengths: readonly number[];
  readonly angles: readonly number[];
};

/**
 * All exits lie at the tailpiece's height over the core's front, with equal gaps along y. Without a slant each afterlength is as
 * long, straight in side view from the bridge contact to its exit; a slant turns the exits about the centreline, and lengthens
 * the bass side's where it is positive. A contact further from that height than the afterlength is long has no exit: the answer
 * is not a number.
 */
export const tailpieceExits = step("tailpiece.exits", 2, (given: ExitsInput): TailpieceExits => {
  const { stringLength, heights, diameters, core, tailpieceHeight, spread, slant, afterlength } = given;
  const across = spreadOut(spread, diameters);
  const turn = Math.tan((slant * Math.PI) / 180);
  const runs = heights.map((z, i) => {
    const contact = intoCore(core, { x: stringLength, z });
    const fall = contact.z - tailpieceHeight;
    const run = Math.sqrt(afterlength ** 2 - fall ** 2) - across[i]! * turn;
    return { along: contact.x + run, fall, run };
  });
  return {
    along: runs.map(({ along }) => along),
    across,
    afterlengths: runs.map(({ fall, run }) => Math.hypot(fall, run)),
    angles: runs.map(({ fall, run }) => (Math.atan2(fall, run) * 180) / Math.PI + core.slope),
  };
});
