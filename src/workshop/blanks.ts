import type { Blank } from "../instrument/blank.ts";
import type { Instrument } from "../instrument/instrument.ts";
import type { Spec } from "../order/spec.ts";
import { lazy } from "../step/lazy.ts";
import type { Store } from "../step/store.ts";
import { type CutList, cutList } from "./cut-list.ts";
import type { Sawing } from "./sawing.ts";
import { leavesOf } from "./stock/leaves-of.ts";
import type { PartBlank } from "./stock/part-blank.ts";
import { type SawnPart, sawnBlanks } from "./stock/sawn-blanks.ts";
import { smallBlanks } from "./stock/small-blanks.ts";
import { type StockFound, stockFor } from "./stock/stock-for.ts";
import { woodTaken } from "./stock/wood-taken.ts";

/** A part's blank, what it may be made of, the best first, and the board that was found for it; mm. */
export type PartStock = {
  readonly part: string;
  readonly blank: Blank;
  readonly woods: readonly string[];
  readonly stock: StockFound;
};

/** The blanks of an instrument's parts and the boards of the shop's stock that they come out of. */
export type Blanks = {
  readonly fingerboard: StockFound;
  /** The blanks of wings, or of a body in one piece, where they lie round their parts. */
  readonly sawn: readonly (PartStock & PartBlank & { readonly part: SawnPart })[];
  /** Bridge, nut, tailpiece and covers. */
  readonly small: readonly PartStock[];
  /** All blanks laid on the boards that they come out of. */
  readonly cutList: CutList;
};

/** A body is joined from at most so many pieces, edge to edge (G: default, confirm). */
const bodyPieces = 4;

/** The blanks of a spec's parts. Each getter is one step, or one for each part, answered by the store. Only necks are glued up from plies, only bodies joined. */
export function blanks(spec: Spec, made: Instrument, neck: Sawing, store: Store): Blanks {
  const { boards } = spec.shop.stock;
  const found = (blank: Blank, woods: readonly string[], joined = 1) =>
    store.answer(stockFor, { ...{ blank, plies: 1, woods, boards }, ...(joined > 1 ? { joined } : {}) })
      .value;
  const { wings, body } = spec.partWoods;
  const own: Blanks = lazy<Blanks>({
    fingerboard: () => found(made.boardBlank, spec.boardWoods),
    sawn: () =>
      sawnBlanks(spec, made, store).map(({ part, made: laid }) => {
        const wood = (part === "body" ? body : wings) ?? woodTaken(neck.stock, spec.neckWoods);
        const { blank, planed, place } = laid();
        const stock = found(blank, [wood], part === "body" ? bodyPieces : 1);
        return { part, blank, planed, place, woods: [wood], stock };
      }),
    small: () =>
      smallBlanks(spec, made).map(({ part, blank, wood }) => {
        return { part, blank, woods: [wood], stock: found(blank, [wood]) };
      }),
    cutList: () => {
      const board = { part: "fingerboard", blank: made.boardBlank, stock: own.fingerboard };
      const parts = [
        { part: "neck", blank: made.neckBlank, stock: neck.stock },
        ...own.sawn,
        board,
        ...own.small,
      ];
      return store.answer(cutList, {
        parts: parts.map(({ part, blank, stock }) => ({ part, blank, stock })),
        ...{ leaves: leavesOf(spec, made), boards },
      }).value;
    },
  });
  return own;
}
