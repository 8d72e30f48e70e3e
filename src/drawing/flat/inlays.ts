import { extentsOf } from "../../geometry/measure.ts";
import type { Path } from "../../geometry/path.ts";
import { step } from "../../step/step.ts";
import { type Flat, layers, letterHeight, turnedOver } from "./flat.ts";

/** What the inserts' drawing shows; mm, mm². */
export type InlaysInput = {
  readonly hand: "right" | "left";
  readonly inlays: readonly {
    readonly id: string;
    readonly design: Path;
    readonly insert: Path;
    readonly thickness: number;
    readonly unreached: number;
    readonly area: number;
  }[];
};

const room = 10;

/** The inserts from the front, one beside the other across, each in the design's outline; what is said of it stands beyond its tail end. */
export const inlaysFlat = step("outline.inlays", 1, ({ hand, inlays }: InlaysInput): Flat => {
  let edge = 0;
  const flats = inlays.map(({ id, design, insert, thickness, unreached, area }): Flat => {
    const { minX, maxX, minY, maxY } = extentsOf([design])!;
    const [dx, dy] = [-minX, edge - minY];
    edge += Math.max(maxY - minY, 3 * letterHeight) + room;
    // Turning a left-hand drawing over would set the second line above the first, so they change places beforehand.
    const words = [
      `${id}: at least ${(Math.ceil(thickness * 100) / 100).toFixed(2)} thick, dressed flush when glued`,
      `cutter leaves ${unreached.toFixed(2)} deep, ${area.toFixed(2)} mm2`,
    ];
    return {
      shapes: [
        { layer: layers.outer, path: moved(insert, dx, dy) },
        { layer: layers.part, path: moved(design, dx, dy) },
      ],
      notes: words.map((text, i) => ({
        ...{
          text,
          x: maxX + dx + 3,
          y: (minY + maxY) / 2 + dy + ((i === 0) === (hand === "right") ? 1 : -1 - letterHeight),
        },
        ...{ height: letterHeight, turn: 0, align: "left" },
      })),
    };
  });
  const flat = {
    shapes: flats.flatMap(({ shapes }) => shapes),
    notes: flats.flatMap(({ notes }) => notes),
  };
  return hand === "left" ? turnedOver(flat, "y") : flat;
});

function moved({ closed, points }: Path, dx: number, dy: number): Path {
  return { closed, points: points.map(({ x, y, bulge }) => ({ x: x + dx, y: y + dy, bulge })) };
}
