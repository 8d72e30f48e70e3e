import { extentsOf } from "../../geometry/measure.ts";
import type { Path } from "../../geometry/path.ts";
import { step } from "../../step/step.ts";
import { type Flat, layers, letterHeight, lineBetween, turnedOver } from "./flat.ts";

/** What a neck's plan shows; mm. `holes` are the tuners' places as they project into the plan. */
export type NeckPlanInput = {
  readonly hand: "right" | "left";
  readonly path: Path;
  readonly holes: readonly { readonly x: number; readonly y: number }[];
  readonly marks: readonly { readonly name: string; readonly x: number }[];
};

/** Half the size of the cross that marks a tuner's place, mm. */
const cross = 3;

/**
 * The neck from the front, head at the left: its outline to saw and shape, its centreline, the places of nut, board's end,
 * core and bridge, and the tuners' places. These are projected: they are bored square to the head's own face.
 */
export const neckPlanFlat = step(
  "outline.neck-plan",
  1,
  ({ hand, path, holes, marks }: NeckPlanInput): Flat => {
    const { minX, maxX, minY, maxY } = extentsOf([path])!;
    const flat: Flat = {
      shapes: [
        { layer: layers.outer, path },
        { layer: layers.part, path },
        { layer: layers.note, path: lineBetween(minX - 4, 0, maxX + 4, 0), chain: true },
        ...marks.map(({ x }) => ({ layer: layers.note, path: lineBetween(x, minY - 2, x, maxY + 2) })),
        ...holes.flatMap(({ x, y }) =>
          [lineBetween(x - cross, y, x + cross, y), lineBetween(x, y - cross, x, y + cross)].map((line) => ({
            ...{ layer: layers.scribe, path: line },
          })),
        ),
      ],
      notes: marks.map(({ name, x }) => ({
        ...{
          text: name,
          x: x + letterHeight / 2,
          y: maxY + 4,
          height: letterHeight,
          turn: 90,
          align: "left" as const,
        },
      })),
    };
    return hand === "left" ? turnedOver(flat, "y") : flat;
  },
);
