import { step } from "../../step/step.ts";
import { stringAcross } from "../strings/layout.ts";
import { type BoardSurface, boardTop } from "./surface.ts";

/** One string's centre at nut and bridge, and its diameter; mm. */
export type GapString = {
  readonly nut: { readonly y: number; readonly z: number };
  readonly bridge: { readonly y: number; readonly z: number };
  readonly diameter: number;
};

/** What the gaps follow from: the frets' places from the nut and their crowns' height over the board; mm. */
export type FretGapsInput = {
  readonly places: readonly number[];
  readonly crown: number;
  readonly board: BoardSurface;
  readonly stringLength: number;
  readonly strings: readonly GapString[];
};

/** A string's gaps along z, mm: open over fret 1; open over any fret; stopped at any fret over any higher one (nothing with one fret). */
export type FretGaps = { readonly first: number; readonly open: number; readonly stopped: number | null };

/** Every string's gaps over the frets' tops, highest string first; negative where it would lie in a fret. */
export const fretGaps = step("fingerboard.fret-gaps", 1, (given: FretGapsInput): readonly FretGaps[] =>
  given.strings.map((string) => gapsOf(string, given)),
);

function gapsOf({ nut, bridge, diameter }: GapString, given: FretGapsInput): FretGaps {
  const { places, stringLength, board, crown } = given;
  const tops = places.map((x) => {
    return boardTop(board, x, stringAcross({ nut: nut.y, bridge: bridge.y }, x, stringLength)) + crown;
  });
  const [start, end] = [nut.z - diameter / 2, bridge.z - diameter / 2];
  const open = places.map((x, i) => start + ((end - start) * x) / stringLength - tops[i]!);
  let stopped = Number.POSITIVE_INFINITY;
  for (const [n, x] of places.entries()) {
    const rise = (end - tops[n]!) / (stringLength - x);
    for (let m = n + 1; m < places.length; m++)
      stopped = Math.min(stopped, tops[n]! + rise * (places[m]! - x) - tops[m]!);
  }
  return { first: open[0]!, open: Math.min(...open), stopped: places.length > 1 ? stopped : null };
}
