import { extentsOf } from "../../geometry/measure.ts";
import type { Path } from "../../geometry/path.ts";
import type { CrownFace } from "../../instrument/bridge/face.ts";
import { step } from "../../step/step.ts";
import { type Flat, layers, letterHeight, lineBetween, turnedOver } from "./flat.ts";

/** What a bridge's drawing shows; mm. */
export type BridgeFlatInput = {
  readonly hand: "right" | "left";
  readonly cut: Path;
  readonly finished: Path;
  readonly holes: readonly { readonly size: number; readonly path: Path }[];
  readonly notches: CrownFace["notches"];
  readonly names: readonly string[];
};

/** How far down a notch's middle is scribed, mm: far enough to be seen while the notch is filed. */
const scribed = 4;

/**
 * The bridge in its flat tail-side face, from the tail: what is cut, the finished bridge with its notches for reference, its
 * bores, and each notch's middle scribed, beside which stand string, width and height of the notch's bottom.
 */
export const bridgeFlat = step("outline.bridge", 1, (given: BridgeFlatInput): Flat => {
  const { hand, cut, finished, holes, notches, names } = given;
  const top = extentsOf([cut])!.maxY;
  const flat: Flat = {
    shapes: [
      { layer: layers.outer, path: cut },
      { layer: layers.part, path: finished },
      ...holes.map(({ size, path }) => ({ layer: layers.bore(size), path })),
      ...notches.map(({ y, bottom, width }) => {
        return {
          layer: layers.scribe,
          path: lineBetween(y, bottom + width / 2, y, bottom + width / 2 - scribed),
        };
      }),
    ],
    notes: notches.map(({ y, bottom, width }, i) => ({
      text: `${names[i]} WIDE ${width.toFixed(2)} BOTTOM ${bottom.toFixed(2)}`,
      ...{ x: y + letterHeight / 2, y: top + 3, height: letterHeight, turn: 90, align: "left" },
    })),
  };
  return hand === "left" ? turnedOver(flat, "x") : flat;
});
