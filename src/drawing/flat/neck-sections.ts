import { extentsOf } from "../../geometry/measure.ts";
import type { Path } from "../../geometry/path.ts";
import { step } from "../../step/step.ts";
import { type Flat, layers, letterHeight, lineBetween } from "./flat.ts";

/** The sections to show, from the nut to the heel; mm. Each path is in its own plane, its top on 0. */
export type NeckSectionsInput = {
  /** Nothing of it is turned over, but it stands on the drawing. */
  readonly hand: "right" | "left";
  readonly sections: readonly {
    readonly name: string;
    readonly x: number;
    readonly depth: number;
    readonly path: Path;
  }[];
};

/** Room between two sections for their words, mm. */
const apart = 25;

/**
 * The neck's sections side by side, from the nut's to the heel's, seen from the tail, the board's glue surface up: outlines to
 * cut as templates, or to hold a carved back against. The same for either hand: a section is alike on both sides.
 */
export const neckSectionsFlat = step("outline.neck-sections", 1, ({ sections }: NeckSectionsInput): Flat => {
  const wide = Math.max(...sections.map(({ path }) => extentsOf([path])!.maxX));
  const placed = sections.map((section, i) => ({ ...section, middle: i * (2 * wide + apart) }));
  return {
    shapes: placed.flatMap(({ path, middle, depth }) => {
      const points = path.points.map((point) => ({ ...point, x: point.x + middle }));
      const outline = { closed: true, points };
      return [
        { layer: layers.outer, path: outline },
        { layer: layers.part, path: outline },
        { layer: layers.note, path: lineBetween(middle, 4, middle, -depth - 4), chain: true as const },
      ];
    }),
    notes: placed.flatMap(({ name, x, depth, middle, path }) => {
      const width = 2 * extentsOf([path])!.maxX;
      const station = name === String(x) ? `X ${x}` : `${name.toUpperCase()} X ${x}`;
      const lines = [`WIDE ${width.toFixed(2)}`, `WOOD ${depth.toFixed(2)}`, station];
      return lines.map((text, i) => ({
        ...{ text, x: middle, y: 7 + letterHeight * 1.7 * i, height: letterHeight, turn: 0 },
        align: "center" as const,
      }));
    }),
  };
});
