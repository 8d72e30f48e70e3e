import type { Instrument } from "../instrument/instrument.ts";
import type { Bandsaw } from "../order/shop.ts";
import { dimensionOf, type Spec } from "../order/spec.ts";
import { lazy } from "../step/lazy.ts";
import type { Store } from "../step/store.ts";
import { type NeckCuts, neckCuts } from "./bandsaw/neck-cuts.ts";
import { sawSequence, type TableCut } from "./bandsaw/sequence.ts";
import { type BlankPlace, blankInPlan, blankInSide, blankPlace } from "./blank-place.ts";
import { type StockFound, stockFor } from "./stock/stock-for.ts";

/** How the neck's blank is got out and sawn: the board, where the blank lies, saw and lines, the order of the cuts. */
export type Sawing = {
  readonly stock: StockFound;
  readonly place: BlankPlace;
  /** Saw, blade, lines and tight places; `plan.kept` and `side.kept` are the outlines of what is left after sawing. */
  readonly cuts: NeckCuts;
  readonly sequence: readonly [TableCut, TableCut];
};

/** The sawing of a spec's neck, right-handed. Each getter is one step, answered by the store. */
export function sawing(spec: Spec, made: Instrument, store: Store): Sawing {
  const own: Sawing = lazy<Sawing>({
    stock: () => {
      const { boards } = spec.shop.stock;
      const plies = dimensionOf(spec, "neck.plies");
      return store.answer(stockFor, { blank: made.neckBlank, plies, woods: spec.neckWoods, boards }).value;
    },
    place: () => {
      const { plan, side } = made.neckProfile;
      return blankPlace(made.neckBlank, plan, side);
    },
    cuts: () => {
      const { plan, side } = made.neckProfile;
      const saws = spec.shop.machines.filter((machine): machine is Bandsaw => machine.kind === "bandsaw");
      return store.answer(neckCuts, {
        plan: { outline: plan, blank: blankInPlan(own.place) },
        side: { outline: side, blank: blankInSide(own.place) },
        allowance: dimensionOf(spec, "saw.allowance"),
        saws: saws.map(({ id, throat, height, blades }) => ({ id, throat, height, blades })),
      }).value;
    },
    sequence: () => {
      const { width, thickness } = made.neckBlank;
      return store.answer(sawSequence, { width, thickness, hand: spec.hand }).value;
    },
  });
  return own;
}
