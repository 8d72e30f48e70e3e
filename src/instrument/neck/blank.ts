import { step } from "../../step/step.ts";
import { type Blank, blankHolding } from "../blank.ts";

/** What the blank must hold and the wood to leave round it, mm. */
export type BlankInput = Blank & {
  readonly allowance: { readonly end: number; readonly side: number; readonly face: number };
};

/** The neck's blank: the neck's own box with its allowances at both ends, sides and faces, rounded up to what is measured off. */
export const neckBlank = step(
  "neck.blank",
  1,
  ({ length, width, thickness, allowance }: BlankInput): Blank => {
    return blankHolding({
      length: length + 2 * allowance.end,
      width: width + 2 * allowance.side,
      thickness: thickness + 2 * allowance.face,
    });
  },
);
