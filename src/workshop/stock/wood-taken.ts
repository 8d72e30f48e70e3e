import type { StockFound } from "./stock-for.ts";

/** The wood that a part is reckoned to be of: that of its board, or of the nearest one where none is large enough, or the best of its woods where the shop has none. */
export function woodTaken(found: StockFound, woods: readonly string[]): string {
  if (found.kind === "ok") return found.way.wood;
  return found.kind === "too-small" ? found.nearest.wood : woods[0]!;
}
