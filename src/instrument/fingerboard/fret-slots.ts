import { step } from "../../step/step.ts";
import { fretPlace } from "./fret-place.ts";
import { slotFloor } from "./slot-floor.ts";
import type { BoardSurface } from "./surface.ts";
import { boardWidth } from "./taper.ts";

/** What the slots follow from; mm. `edge` is the wood outside a blind slot's ends, and tells nothing of a through one. */
export type FretSlotsInput = {
  readonly count: number;
  readonly slots: "through" | "blind";
  readonly stringLength: number;
  readonly board: BoardSurface;
  readonly tang: { readonly width: number; readonly depth: number };
  readonly fit: number;
  readonly under: number;
  readonly edge: number;
};

/** One fret's slot: its middle from the nut and half its length across the board, mm, and the wood left under its ends. */
export type FretSlot = { readonly x: number; readonly half: number; readonly left: number };

/** The slots, their width along x and their depth square to the curved surface, which their bottoms follow; mm. */
export type FretSlots = {
  readonly width: number;
  readonly depth: number;
  /** The least wood under any slot: at the ends of one, where the arched board is thinnest. */
  readonly left: number;
  readonly slots: readonly FretSlot[];
};

/** The frets' slots. One beyond the board's end gives numbers that mean nothing; contradictions find it beforehand. */
export const fretSlots = step("fingerboard.fret-slots", 2, (given: FretSlotsInput): FretSlots => {
  const { board, tang, fit, under } = given;
  const depth = tang.depth + under;
  const short = given.slots === "blind" ? given.edge : 0;
  const slots = Array.from({ length: given.count }, (_, i): FretSlot => {
    const x = fretPlace(i + 1, given.stringLength);
    const half = boardWidth(board.taper, x) / 2 - short;
    return { x, half, left: Math.min(...[-half, half].map((y) => slotFloor(board, x, y, depth))) };
  });
  return { width: tang.width + fit, depth, left: Math.min(...slots.map(({ left }) => left)), slots };
});
