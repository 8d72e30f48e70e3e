import { step } from "../../step/step.ts";
import type { Taper } from "./taper.ts";
import { boardWidth } from "./taper.ts";

/** What the frets' ends follow from: mm, and the bevel in degrees from square to the board. `outer`: the two outer strings' diameters. */
export type FretEndsInput = {
  readonly places: readonly number[];
  readonly taper: Taper;
  readonly inset: number;
  readonly crown: number;
  readonly bevel: number;
  readonly dressing: number;
  readonly thin: number;
  readonly outer: { readonly treble: number; readonly bass: number };
};

/** Each fret's length along y, and how far in from a fret's end its bevel runs on either side; mm. */
export type FretEnds = {
  readonly lengths: readonly number[];
  readonly treble: number;
  readonly bass: number;
};

/** The frets' lengths and ends: a side whose outer string is thin is dressed further, so that a finger feels no end there (G). */
export const fretEnds = step("fingerboard.fret-ends", 1, (given: FretEndsInput): FretEnds => {
  const bevel = given.crown * Math.tan((given.bevel * Math.PI) / 180);
  const run = (outer: number) => bevel + (outer < given.thin ? given.dressing : 0);
  return {
    lengths: given.places.map((x) => boardWidth(given.taper, x) - 2 * given.inset),
    treble: run(given.outer.treble),
    bass: run(given.outer.bass),
  };
});
