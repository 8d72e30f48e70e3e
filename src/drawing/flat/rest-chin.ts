import { circle } from "../../geometry/circle.ts";
import { extentsOf } from "../../geometry/measure.ts";
import type { Path } from "../../geometry/path.ts";
import type { Point } from "../../geometry/point.ts";
import { step } from "../../step/step.ts";
import { type Flat, layers, letterHeight, turnedOver } from "./flat.ts";

/** A chin rest's footprint on the part that carries it, both seen from the front, mm; and its screws' holes. */
export type RestChinInput = {
  readonly hand: "right" | "left";
  readonly on: string;
  readonly part: Path;
  readonly foot: Path;
  readonly screws: readonly { readonly at: Point; readonly size: number }[];
  readonly depth: number | null;
  readonly edge: number;
};

/** The chin rest's footprint to scribe round on its part's front, and the holes for its screws. */
export const restChinFlat = step("outline.rest-chin", 1, (given: RestChinInput): Flat => {
  const { hand, on, part, foot, screws, depth, edge } = given;
  const drawn: Flat = {
    shapes: [
      { layer: layers.part, path: part },
      { layer: layers.scribe, path: foot },
      ...screws.map(({ at, size }) => ({ layer: layers.bore(size), path: circle(at, size / 2) })),
    ],
    notes: [],
  };
  const flat = hand === "left" ? turnedOver(drawn, "y") : drawn;
  const { maxX, maxY } = extentsOf(flat.shapes.map(({ path }) => path))!;
  const words = [
    `chin rest on the ${on}, seen from its front`,
    depth === null
      ? `its clamp grips an edge ${edge.toFixed(2)} thick`
      : `holes ${depth.toFixed(2)} deep from the front`,
  ];
  return {
    ...flat,
    notes: words.map((text, i) => ({
      ...{ text, x: maxX + 8, y: maxY - (i + 1) * 2 * letterHeight },
      ...{ height: letterHeight, turn: 0, align: "left" as const },
    })),
  };
});
