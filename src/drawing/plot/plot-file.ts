import type { Answer, Store } from "../../step/store.ts";
import type { Model } from "../../workshop/model.ts";
import type { Sheet } from "../sheet/sheet.ts";

/** A plot of a pack: its name without ending, the part that it tells of, what it shows, and its heading. */
export type PlotFile = {
  readonly name: string;
  readonly part: string;
  readonly what: string;
  readonly heading: string;
  readonly of: (model: Model, store: Store) => Answer<Sheet>;
};
