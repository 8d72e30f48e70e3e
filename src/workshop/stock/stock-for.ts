import type { Blank } from "../../instrument/blank.ts";
import type { Shop } from "../../order/shop.ts";
import { step } from "../../step/step.ts";
import { type Way, waysOutOf } from "./ways.ts";

/**
 * The blank, the most boards that it may be glued up from, the most pieces that it may be joined from edge to edge (one unless it is
 * said), its woods, the best first, and the shop's boards; mm.
 */
export type StockInput = {
  readonly blank: Blank;
  readonly plies: number;
  readonly joined?: number;
  readonly woods: readonly string[];
  readonly boards: Shop["stock"]["boards"];
};

/**
 * The board that the blank comes out of and how, or that there is none: then the way that misses least, or that the shop has
 * no board of these woods.
 */
export type StockFound =
  | { readonly kind: "ok"; readonly way: Way }
  | { readonly kind: "too-small"; readonly nearest: Way }
  | { readonly kind: "no-wood" };

/**
 * The board for a blank, whose length always runs along the board's, that is along the grain.
 *
 * Of the ways that miss nothing: the first wood, then the fewest plies, then the least of the board's section left over, then
 * the first name. Of those that miss something, the one that misses least in all, in the same order.
 */
export const stockFor = step(
  "blank.stock",
  1,
  ({ blank, plies, joined, woods, boards }: StockInput): StockFound => {
    const ways = woods
      .flatMap((wood, rank) =>
        boards
          .filter((board) => board.wood === wood)
          .flatMap((board) => waysOutOf(board, blank, plies, joined))
          .map((way) => ({ way, rank })),
      )
      .sort(
        (a, b) =>
          missing(a.way) - missing(b.way) ||
          a.rank - b.rank ||
          a.way.plies - b.way.plies ||
          a.way.waste - b.way.waste ||
          (a.way.board < b.way.board ? -1 : a.way.board > b.way.board ? 1 : 0),
      );
    const best = ways[0]?.way;
    if (best === undefined) return { kind: "no-wood" };
    return missing(best) === 0 ? { kind: "ok", way: best } : { kind: "too-small", nearest: best };
  },
);

function missing({ missing: { length, width, thickness } }: Way): number {
  return length + width + thickness;
}
