import { circle } from "../../geometry/circle.ts";
import { extentsOf } from "../../geometry/measure.ts";
import type { Path } from "../../geometry/path.ts";
import { step } from "../../step/step.ts";
import { type Flat, layers, letterHeight, lineBetween, turnedOver } from "./flat.ts";

/** A place along a profile: its name, where it is from the nut, and how thick the board is there; mm. */
export type ProfilePlace = { readonly name: string; readonly at: number; readonly thick: number };

/** What a side template shows; mm. */
export type BoardSideInput = {
  /** Nothing of it is turned over, but from which side it is seen stands on the drawing. */
  readonly hand: "right" | "left";
  readonly path: Path;
  readonly places: readonly ProfilePlace[];
};

/** What the bass edge's drawing shows; mm. `corner`: where along the edge the corner at the board's end begins. */
export type BoardEdgeInput = {
  readonly hand: "right" | "left";
  readonly path: Path;
  readonly places: readonly ProfilePlace[];
  readonly corner: number;
  readonly dots: {
    readonly size: number;
    readonly depth: number;
    readonly list: readonly { readonly fret: number; readonly along: number; readonly z: number }[];
  };
};

/**
 * The board's profile under its middle line, head at the left and front up: a template for its scoop. The same for either hand: only the
 * side that it is seen from differs.
 */
export const boardSideFlat = step("outline.fingerboard-side", 1, ({ path, places }: BoardSideInput): Flat => {
  return { shapes: outlined(path, places), notes: thicknesses(path, places, 4) };
});

/**
 * The board's bass edge seen square, from outside: the wall as it would be without the corner at the board's end, and the side dots as bores square
 * into it. Of a left-hand board the head lies at the right.
 */
export const boardEdgeFlat = step("outline.fingerboard-edge", 1, (given: BoardEdgeInput): Flat => {
  const { hand, path, places, corner, dots } = given;
  const { maxY } = extentsOf([path])!;
  const flat: Flat = {
    shapes: [
      ...outlined(path, places),
      { layer: layers.note, path: lineBetween(corner, 0, corner, maxY) },
      ...dots.list.map(({ along, z }) => ({
        layer: layers.bore(dots.size),
        path: circle({ x: along, y: z }, dots.size / 2),
      })),
    ],
    notes: [
      ...thicknesses(path, places, 12),
      // In two rows by turns: the highest ones stand nearer to each other than a number is wide.
      ...dots.list.map(({ fret, along }, i) => ({
        ...{ text: `${fret}`, x: along, y: maxY + (i % 2 === 0 ? 2 : 6), height: letterHeight },
        ...{ turn: 0, align: "center" as const },
      })),
      {
        ...{ text: `DOTS ${dots.depth.toFixed(2)} DEEP, SQUARE INTO THE EDGE`, x: 8, y: maxY + 12 },
        ...{ height: letterHeight, turn: 0, align: "left" },
      },
    ],
  };
  return hand === "left" ? turnedOver(flat, "x") : flat;
});

function outlined(path: Path, places: readonly ProfilePlace[]): Flat["shapes"] {
  return [
    { layer: layers.outer, path },
    { layer: layers.part, path },
    ...places.map(({ at, thick }) => ({ layer: layers.note, path: lineBetween(at, 0, at, thick) })),
  ];
}

/** What stands `over` the profile at each place, upright. */
function thicknesses(path: Path, places: readonly ProfilePlace[], over: number): Flat["notes"] {
  const { minX, maxX, maxY } = extentsOf([path])!;
  return places.map(({ name, at, thick }) => ({
    ...{ text: `${name} THICK ${thick.toFixed(2)}`, height: letterHeight, turn: 90, align: "left" as const },
    // Beside the ends and over the places between.
    ...{ x: at + (at === minX ? 1 : at === maxX ? 0 : 0.5) * letterHeight, y: maxY + over },
  }));
}
