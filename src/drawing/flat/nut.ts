import type { NutBlank } from "../../instrument/nut/blank.ts";
import { step } from "../../step/step.ts";
import { type Flat, layers, letterHeight, lineBetween, turnedOver } from "./flat.ts";

/** What a nut's drawing shows; mm. */
export type NutFlatInput = {
  readonly hand: "right" | "left";
  readonly nut: NutBlank;
  readonly names: readonly string[];
};

/**
 * The nut from the tail: its blank to cut, the finished nut with its slots for reference, and a scribed line from the blank's
 * top to the bottom of each slot, beside which stand string, width, height of the bottom and depth under the blank's top.
 */
export const nutFlat = step("outline.nut", 1, ({ hand, nut, names }: NutFlatInput): Flat => {
  const flat: Flat = {
    shapes: [
      { layer: layers.outer, path: nut.blank },
      { layer: layers.part, path: nut.finished },
      ...nut.slots.map(({ y, bottom, depth }) => {
        return { layer: layers.scribe, path: lineBetween(y, bottom + depth, y, bottom) };
      }),
    ],
    notes: nut.slots.map(({ y, bottom, width, depth }, i) => ({
      text: `${names[i]} WIDE ${width.toFixed(2)} BOTTOM ${bottom.toFixed(2)} DEEP ${depth.toFixed(2)}`,
      ...{ x: y + letterHeight / 2, y: nut.height + 3, height: letterHeight, turn: 90, align: "left" },
    })),
  };
  return hand === "left" ? turnedOver(flat, "x") : flat;
});
