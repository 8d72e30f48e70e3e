import { step } from "../../step/step.ts";

/** What the blank must hold and the wood to leave round it, mm. */
export type BlankInput = {
  readonly length: number;
  readonly width: number;
  readonly thickness: number;
  readonly allowance: { readonly end: number; readonly side: number; readonly face: number };
};

/** A blank's size, mm; its length runs along the grain. */
export type Blank = { readonly length: number; readonly width: number; readonly thickness: number };

/** What lengths of a blank are sawn to, and its width and thickness planed to, mm. */
const steps = { length: 5, planed: 1 };

/** The neck's blank: the neck's own box with its allowances at both ends, sides and faces, rounded up to what is measured off. */
export const neckBlank = step(
  "neck.blank",
  1,
  ({ length, width, thickness, allowance }: BlankInput): Blank => {
    const up = (value: number, to: number) => Math.ceil(value / to - 1e-9) * to;
    return {
      length: up(length + 2 * allowance.end, steps.length),
      width: up(width + 2 * allowance.side, steps.planed),
      thickness: up(thickness + 2 * allowance.face, steps.planed),
    };
  },
);
