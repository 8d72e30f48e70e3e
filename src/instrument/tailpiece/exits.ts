import { step } from "../../step/step.ts";
import { type CoreFrame, intoCore } from "../core/frame.ts";

/** Lengths in mm; `heights` are the strings' centres over z = 0 at the bridge, highest string first. */
export type ExitsInput = {
  readonly stringLength: number;
  readonly heights: readonly number[];
  readonly core: CoreFrame;
  readonly tailpieceHeight: number;
  readonly afterlength: number;
};

/**
 * Where the strings leave the tailpiece, seen from the side, and how they fall to it from the bridge. `along` is x' of
 * each exit, mm; `angles` are degrees to z = 0, positive falling to the tail; both from the highest string.
 */
export type TailpieceExits = { readonly along: readonly number[]; readonly angles: readonly number[] };

/**
 * All exits lie at the tailpiece's height over the core's front; each afterlength runs straight, in side view, from the
 * bridge contact to its exit. A contact further from that height than the afterlength is long has no exit: the answer is not
 * a number.
 */
export const tailpieceExits = step("tailpiece.exits", 1, (given: ExitsInput): TailpieceExits => {
  const { stringLength, heights, core, tailpieceHeight, afterlength } = given;
  const falls = heights.map((z) => {
    const contact = intoCore(core, { x: stringLength, z });
    const fall = contact.z - tailpieceHeight;
    return { contact, fall };
  });
  return {
    along: falls.map(({ contact, fall }) => contact.x + Math.sqrt(afterlength ** 2 - fall ** 2)),
    angles: falls.map(({ fall }) => (Math.asin(fall / afterlength) * 180) / Math.PI + core.slope),
  };
});
