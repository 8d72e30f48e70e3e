import { step } from "../../step/step.ts";
import { stringAcross } from "../strings/layout.ts";
import type { GapString } from "./fret-gaps.ts";
import { type BoardSurface, boardTop } from "./surface.ts";

/** What the gaps follow from: stations from the nut, and how high frets stand over the board (0 without); mm. */
export type BoardGapsInput = {
  readonly board: BoardSurface;
  readonly stations: readonly number[];
  readonly crown: number;
  readonly stringLength: number;
  readonly strings: readonly GapString[];
};

/**
 * One string's gaps along z under its underside, to the board or to the frets' tops, at the nut, at each station and at the board's
 * end; mm. `scoop` is the gap under a straightedge that stands on the bare board along this string, at nut and end, in the middle of its
 * length. `least` is the least gap over the bare board itself, and `at` where, from the nut; negative where the string would lie in the board.
 */
export type BoardGaps = {
  readonly nut: number;
  readonly stations: readonly number[];
  readonly end: number;
  readonly scoop: number;
  readonly least: number;
  readonly at: number;
};

/** How many places between nut and board's end the least gap is looked for at. */
const places = 54;

/** Every string's gaps over the board, highest string first. */
export const boardGaps = step("fingerboard.gaps", 1, (given: BoardGapsInput): readonly BoardGaps[] =>
  given.strings.map((string) => gapsOf(string, given)),
);

function gapsOf({ nut, bridge, diameter }: GapString, given: BoardGapsInput): BoardGaps {
  const { board, stations, crown, stringLength } = given;
  const { length } = board.taper;
  const under = (x: number) =>
    boardTop(board, x, stringAcross({ nut: nut.y, bridge: bridge.y }, x, stringLength));
  const bare = (x: number) => nut.z + ((bridge.z - nut.z) * x) / stringLength - diameter / 2 - under(x);
  const along = Array.from({ length: places + 1 }, (_, i) => (length * i) / places);
  const at = along.reduce((lowest, x) => (bare(x) < bare(lowest) ? x : lowest));
  return {
    ...{ nut: bare(0) - crown, stations: stations.map((x) => bare(x) - crown), end: bare(length) - crown },
    ...{ scoop: (under(0) + under(length)) / 2 - under(length / 2), least: bare(at), at },
  };
}
