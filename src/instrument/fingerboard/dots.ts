import { circle } from "../../geometry/circle.ts";
import { step } from "../../step/step.ts";
import { fretPlace } from "./fret-place.ts";
import { placesOn } from "./places-on.ts";
import { type BoardSurface, boardTop } from "./surface.ts";
import { boardWidth } from "./taper.ts";

/** Which notes are marked and where they lie: `frets` is how many the board has, null on a fretless one; mm. */
export type DotsInput = {
  readonly numbers: readonly number[];
  readonly frets: number | null;
  readonly stringLength: number;
  readonly board: BoardSurface;
  readonly size: number;
  readonly depth: number;
};

/** A dot in the board's face: the fret that it marks, its middle from the nut and to the treble side, and how high over the underside its bore's floor lies; mm. */
export type Dot = { readonly fret: number; readonly x: number; readonly y: number; readonly floor: number };

/** The dots of the board's face; their diameter, and their bores' depth under the lowest place of the surface over each; mm. */
export type Dots = { readonly size: number; readonly depth: number; readonly list: readonly Dot[] };

/** A dot in the board's bass edge: its middle from the nut, over the underside, and along the edge from the nut; how thick the edge is there; mm. */
export type SideDot = {
  readonly fret: number;
  readonly x: number;
  readonly z: number;
  readonly along: number;
  readonly edge: number;
};

/** The dots of the board's bass edge, their diameter and their bores' depth, square into the edge; mm. */
export type SideDots = { readonly size: number; readonly depth: number; readonly list: readonly SideDot[] };

/** Which numbers are marked by two dots beside each other: whole octaves. */
const octave = 12;

/** Those of a design's marked notes that a board has: a fretted one leaves out those past its last fret. */
export function markedOn(numbers: readonly number[], frets: number | null): readonly number[] {
  return numbers.filter((n) => frets === null || n <= frets);
}

/** Where a note is marked, from the nut, mm: midway between its fret and the one before, or at the note itself on a fretless board. */
function marked({
  numbers,
  frets,
  stringLength,
}: DotsInput): { readonly fret: number; readonly x: number }[] {
  return markedOn(numbers, frets).map((fret) => {
    const at = fretPlace(fret, stringLength);
    return { fret, x: frets === null ? at : (at + fretPlace(fret - 1, stringLength)) / 2 };
  });
}

/**
 * The dots of the face: one on the centreline, or two, `apart` from middle to middle, at the octaves. Their bores go down along z; each floor is
 * as deep as set under the lowest place of the surface over it, so that the dot shows everywhere.
 */
export const faceDots = step("fingerboard.dots", 1, (given: DotsInput & { readonly apart: number }): Dots => {
  const { board, size, depth, apart } = given;
  const list = marked(given).flatMap(({ fret, x }) => {
    const across = fret % octave === 0 ? [apart / 2, -apart / 2] : [0];
    return across.map((y): Dot => {
      const rim = placesOn(circle({ x, y }, size / 2));
      return {
        fret,
        x,
        y,
        floor: Math.min(...rim.map((place) => boardTop(board, place.x, place.y))) - depth,
      };
    });
  });
  return { size, depth, list };
});

/** The dots of the bass edge, each in the middle of the edge's thickness. */
export const sideDots = step("fingerboard.side-dots", 1, (given: DotsInput): SideDots => {
  const { board, size, depth } = given;
  const { taper } = board;
  const slant = Math.hypot(taper.length, (taper.end - taper.nut) / 2) / taper.length;
  const list = marked(given).map(({ fret, x }): SideDot => {
    const edge = boardTop(board, x, -boardWidth(taper, x) / 2);
    return { fret, x, z: edge / 2, along: x * slant, edge };
  });
  return { size, depth, list };
});
