import type { Solid } from "../geometry/solid/solid.ts";
import { type Drilled, drilledCutter } from "./drilled.ts";
import { type Pocket, pocketCutter } from "./pocket.ts";

/** All that is sunk into a part for the electronics: pockets square to its faces, and bores; in its own axes. */
export type Sunken = { readonly pockets: readonly Pocket[]; readonly drilled: readonly Drilled[] };

/** What is sunk into a part and no more; nothing where it is none. */
export function sunkenOf(given: Sunken | undefined): Sunken {
  return given === undefined
    ? { pockets: [], drilled: [] }
    : { pockets: given.pockets, drilled: given.drilled };
}

/** A part so thick, mm, in its own axes, less what is sunk into it. */
export function lessSunken(part: Solid, { pockets, drilled }: Sunken, thickness: number): Solid {
  const by = [...pockets.map((pocket) => pocketCutter(pocket, thickness)), ...drilled.map(drilledCutter)];
  return by.length === 0 ? part : { kind: "cut", from: part, by };
}
