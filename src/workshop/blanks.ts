import type { Instrument } from "../instrument/instrument.ts";
import type { Spec } from "../order/spec.ts";
import { lazy } from "../step/lazy.ts";
import type { Store } from "../step/store.ts";
import { type StockFound, stockFor } from "./stock/stock-for.ts";

/** The boards of the shop's stock that parts other than the neck come out of. */
export type Blanks = { readonly fingerboard: StockFound };

/** The stock of a spec's parts. Each getter is one step, answered by the store. A fingerboard is never glued up. */
export function blanks(spec: Spec, made: Instrument, store: Store): Blanks {
  const { boards } = spec.shop.stock;
  return lazy<Blanks>({
    fingerboard: () =>
      store.answer(stockFor, { blank: made.boardBlank, plies: 1, woods: spec.boardWoods, boards }).value,
  });
}
