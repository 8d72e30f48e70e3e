import { extentsOf } from "../../geometry/measure.ts";
import type { Path } from "../../geometry/path.ts";
import { step } from "../../step/step.ts";
import { type Flat, layers, letterHeight, lineBetween } from "./flat.ts";

/**
 * What a neck's side shows; mm. `stations` are where its thickness is held, and from which to which height the wood stands;
 * `channels` are those of its rods, two at the same place once.
 */
export type NeckSideInput = {
  /** Nothing of it is turned over, but from which side it is seen stands on the drawing. */
  readonly hand: "right" | "left";
  readonly path: Path;
  readonly stations: readonly { readonly name: string; readonly x: number; readonly wood: number }[];
  readonly channels: readonly { readonly start: number; readonly length: number; readonly depth: number }[];
  readonly marks: readonly { readonly name: string; readonly x: number }[];
};

/**
 * The neck from the side, head at the left and front up: its outline to saw and shape, the surface that the board is glued
 * to, the stations with the wood that is left there, and the bottoms of the rods' channels. The same for either hand: only the side that it is seen from differs.
 */
export const neckSideFlat = step(
  "outline.neck-side",
  2,
  ({ path, stations, channels, marks }: NeckSideInput): Flat => {
    const { minX, maxX, maxY } = extentsOf([path])!;
    const upright = (text: string, x: number) => {
      return {
        text,
        x: x + letterHeight / 2,
        y: maxY + 4,
        height: letterHeight,
        turn: 90,
        align: "left",
      } as const;
    };
    return {
      shapes: [
        { layer: layers.outer, path },
        { layer: layers.part, path },
        { layer: layers.note, path: lineBetween(minX - 4, 0, maxX + 4, 0), chain: true },
        ...[
          ...stations.map(({ x, wood }) => lineBetween(x, 0, x, -wood)),
          ...marks.map(({ x }) => lineBetween(x, 2, x, -2)),
          ...channels.map(({ start, length, depth }) => lineBetween(start, -depth, start + length, -depth)),
        ].map((line) => ({ layer: layers.note, path: line })),
      ],
      notes: [
        ...stations.map(({ name, x, wood }) => upright(`${name} X ${x} WOOD ${wood.toFixed(2)}`, x)),
        ...marks.map(({ name, x }) => upright(name, x)),
        ...channels.map(({ start, length, depth }) =>
          upright(`ROD END ${depth.toFixed(2)} DEEP`, start + length),
        ),
      ],
    };
  },
);
