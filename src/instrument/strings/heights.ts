import { step } from "../../step/step.ts";
import { type BoardSurface, boardTop } from "../fingerboard/surface.ts";
import { stringAcross } from "./layout.ts";

/** Lengths in mm, per string from the highest to the lowest. */
export type HeightsInput = {
  readonly stringLength: number;
  readonly nut: readonly number[];
  readonly bridge: readonly number[];
  readonly diameters: readonly number[];
  readonly board: BoardSurface;
  /** How high frets stand over the board, which clearances are measured from; 0 on a fretless one. */
  readonly frets: number;
  readonly clearance: {
    readonly nut: { readonly high: number; readonly low: number };
    readonly end: { readonly high: number; readonly low: number };
  };
};

/** The strings' centres over z = 0 where they pass nut, board's end and bridge, mm, highest string first. */
export type StringHeights = {
  readonly nut: readonly number[];
  readonly end: readonly number[];
  readonly bridge: readonly number[];
};

/**
 * The height chain: board, the frets' crowns if any, clearance along z under the string, half its diameter; then straight on from the board's end to
 * the bridge. Clearances go from the highest string's to the lowest's in even steps by string number.
 */
export const stringHeights = step("strings.heights", 2, (given: HeightsInput): StringHeights => {
  const { stringLength, board, frets, clearance, diameters } = given;
  const last = diameters.length - 1;
  const stepped = ({ high, low }: { high: number; low: number }, i: number) =>
    high + ((low - high) * i) / last;
  const over = (x: number, i: number, gap: number) =>
    boardTop(board, x, stringAcross({ nut: given.nut[i]!, bridge: given.bridge[i]! }, x, stringLength)) +
    frets +
    gap +
    diameters[i]! / 2;
  const nut = diameters.map((_, i) => over(0, i, stepped(clearance.nut, i)));
  const end = diameters.map((_, i) => over(board.taper.length, i, stepped(clearance.end, i)));
  const bridge = nut.map((z, i) => z + ((end[i]! - z) * stringLength) / board.taper.length);
  return { nut, end, bridge };
});
