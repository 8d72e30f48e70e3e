import type { Paper } from "../../order/shop.ts";
import { type FullSize, laidOut } from "./laid-out.ts";
import type { TileTitle } from "./tile-words.ts";

/** More sheets than so many are worth another paper: each has joins to cut, lay and glue. */
const many = 8;

/**
 * The one of a shop's papers that takes the fewest sheets of a drawing, the first of several, where the drawing's own paper takes more than eight and at least twice as many;
 * null where there is none. Pages of remarks don't count.
 */
export function fewerSheets(given: FullSize, papers: readonly Paper[]): TileTitle["fewer"] {
  const count = (paper: Paper) => laidOut({ ...given, paper })?.plan.tiles.length ?? 0;
  const own = count(given.paper);
  if (own <= many) return null;
  const others = papers
    .filter(({ id }) => id !== given.paper.id)
    .map((paper) => ({ paper: paper.id, sheets: count(paper) }));
  const [best] = others.toSorted((a, b) => a.sheets - b.sheets);
  return best !== undefined && 2 * best.sheets <= own ? best : null;
}
