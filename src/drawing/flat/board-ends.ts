import { extentsOf } from "../../geometry/measure.ts";
import type { Path } from "../../geometry/path.ts";
import { step } from "../../step/step.ts";
import { type Flat, layers, letterHeight, lineBetween } from "./flat.ts";

/** The sections to show, from nut to end, each in its own plane, y from the centreline and z over the underside; mm. */
export type BoardEndsInput = {
  /** Nothing of it is turned over, but it stands on the drawing. */
  readonly hand: "right" | "left";
  readonly sections: readonly { readonly name: string; readonly radius: number; readonly path: Path }[];
};

/** Room between two sections, mm: enough for the words of both. */
const apart = 30;

/**
 * The board's sections at nut and end side by side, seen from the tail: closed outlines whose tops are true arcs, as templates to shape to or gauges
 * to hold against. The same for either hand: at its ends a board is alike on both sides.
 */
export const boardEndsFlat = step("outline.fingerboard-ends", 1, ({ sections }: BoardEndsInput): Flat => {
  let middle = 0;
  const flats = sections.map(({ name, radius, path }, i): Flat => {
    const { minX, maxX, maxY } = extentsOf([path])!;
    if (i > 0) middle += -minX;
    const at = middle;
    middle += maxX + apart;
    const outline = { closed: true, points: path.points.map((point) => ({ ...point, x: point.x + at })) };
    const lines = [
      `THICK ${maxY.toFixed(2)}`,
      `WIDE ${(maxX - minX).toFixed(2)}`,
      `RADIUS ${radius.toFixed(2)}`,
      name,
    ];
    return {
      shapes: [
        { layer: layers.outer, path: outline },
        { layer: layers.part, path: outline },
        { layer: layers.note, path: lineBetween(at, -4, at, maxY + 4), chain: true },
      ],
      notes: lines.map((text, k) => ({
        ...{ text, x: at, y: maxY + 7 + letterHeight * 1.7 * k, height: letterHeight, turn: 0 },
        align: "center" as const,
      })),
    };
  });
  return { shapes: flats.flatMap(({ shapes }) => shapes), notes: flats.flatMap(({ notes }) => notes) };
});
