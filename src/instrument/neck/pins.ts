import { step } from "../../step/step.ts";

/** An index pin under the board: where it stands from the nut, from the centreline to the treble side, and how thick it is, mm. */
type UnderBoard = { readonly at: number; readonly offset: number; readonly diameter: number };

/** What the index pins follow from, mm: the neck from `minX` to `maxX`, and the wood that the blank has beyond it at either end. */
export type PinsInput = {
  readonly minX: number;
  readonly maxX: number;
  readonly allowance: number;
  readonly head: number;
  readonly tail: number;
  readonly upper: UnderBoard;
  readonly lower: UnderBoard;
  readonly depth: number;
};

/** An index pin's hole: its middle, its diameter and its depth from z = 0, mm; those in waste go through the blank. */
export type Pin = {
  readonly id: "head" | "tail" | "upper" | "lower";
  readonly x: number;
  readonly y: number;
  readonly diameter: number;
  readonly depth: number | "through";
};

/**
 * The four index pins: one in the middle of the waste at either end, on the centreline, and two under the board, which covers
 * their holes. Every template of this neck shares them.
 */
export const neckPins = step("neck.pins", 1, (given: PinsInput): readonly Pin[] => {
  const { minX, maxX, allowance, head, tail, upper, lower, depth } = given;
  return [
    { id: "head", x: minX - allowance / 2, y: 0, diameter: head, depth: "through" },
    { id: "tail", x: maxX + allowance / 2, y: 0, diameter: tail, depth: "through" },
    { id: "upper", x: upper.at, y: upper.offset, diameter: upper.diameter, depth },
    { id: "lower", x: lower.at, y: lower.offset, diameter: lower.diameter, depth },
  ];
});
