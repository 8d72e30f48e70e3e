import { extentsOf } from "../../geometry/measure.ts";
import type { Path } from "../../geometry/path.ts";
import type { Drilled } from "../../instrument/drilled.ts";
import type { Pocket } from "../../instrument/pocket.ts";
import { step } from "../../step/step.ts";
import { type Flat, layers, letterHeight, turnedOver } from "./flat.ts";
import { sunkenShapes, sunkenWords } from "./sunken-shapes.ts";

/** A part's outline, seen from its front, how thick it is, and what is sunk into it from one face; mm. */
export type PartFaceInput = {
  readonly hand: "right" | "left";
  readonly name: string;
  readonly face: "front" | "back";
  readonly path: Path;
  readonly thickness: number;
  readonly pockets: readonly Pocket[];
  readonly drilled: readonly Drilled[];
};

/**
 * A part seen from one of its faces, head at the left: its outline for reference, and what is sunk into that face. From the back the treble side
 * lies the other way, as it does when the part is turned over on the bench.
 */
export const partFaceFlat = step("outline.part-face", 1, (given: PartFaceInput): Flat => {
  const { hand, name, face, path, thickness, pockets, drilled } = given;
  const { shapes, notes } = sunkenShapes(pockets, drilled, thickness);
  const drawn: Flat = { shapes: [{ layer: layers.part, path }, ...shapes], notes };
  const flat = (hand === "left") === (face === "front") ? turnedOver(drawn, "y") : drawn;
  const { maxX, maxY } = extentsOf(flat.shapes.map((shape) => shape.path))!;
  const words = [
    `${name}, ${thickness.toFixed(2)} thick, seen from its ${face}`,
    ...sunkenWords(pockets, drilled, face),
  ];
  return {
    ...flat,
    // Written afterwards, so that they stand in the same order for either hand.
    notes: [
      ...flat.notes,
      ...words.map((text, i) => ({
        ...{ text, x: maxX + 8, y: maxY - (i + 1) * 2 * letterHeight },
        ...{ height: letterHeight, turn: 0, align: "left" as const },
      })),
    ],
  };
});
