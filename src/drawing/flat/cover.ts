import { circle } from "../../geometry/circle.ts";
import { extentsOf } from "../../geometry/measure.ts";
import type { Path } from "../../geometry/path.ts";
import type { Point } from "../../geometry/point.ts";
import { step } from "../../step/step.ts";
import { type Flat, layers, letterHeight, turnedOver } from "./flat.ts";

/** A cover where it lies in its part, seen from the front of that, its screws, how thick it is, and which face it closes; mm. */
export type CoverFlatInput = {
  readonly hand: "right" | "left";
  readonly id: string;
  readonly face: "front" | "back";
  readonly path: Path;
  readonly screws: readonly Point[];
  readonly screw: number;
  readonly thickness: number;
};

/** A cover from its outside, at the place and turn that it has in its part: its outline to cut and its screws' holes. */
export const coverFlat = step("outline.cover", 1, (given: CoverFlatInput): Flat => {
  const { hand, id, face, path, screws, screw, thickness } = given;
  const drawn: Flat = {
    shapes: [
      { layer: layers.outer, path },
      ...screws.map((at) => ({ layer: layers.bore(screw), path: circle(at, screw / 2) })),
    ],
    notes: [],
  };
  const flat = (hand === "left") === (face === "front") ? turnedOver(drawn, "y") : drawn;
  const { maxX, maxY } = extentsOf(flat.shapes.map((shape) => shape.path))!;
  const words = [
    `cover over recess ${id}, ${thickness.toFixed(2)} thick`,
    `seen from outside, flush with the ${face}`,
  ];
  return {
    ...flat,
    notes: words.map((text, i) => ({
      ...{ text, x: maxX + 8, y: maxY - (i + 1) * 2 * letterHeight },
      ...{ height: letterHeight, turn: 0, align: "left" as const },
    })),
  };
});
