import type { Shop } from "../../order/shop.ts";
import type { PaperSize } from "./neck/input.ts";

/** The largest sheet that is asked of a shop's own printer, mm. */
const largestOwn = 430;

/** Sheets of a print shop, for what is on none of the shop's own papers. */
const printShop: readonly PaperSize[] = [
  { id: "A2", width: 420, height: 594, margin: 6 },
  { id: "A1", width: 594, height: 841, margin: 6 },
  { id: "A0", width: 841, height: 1189, margin: 6 },
];

/** The papers that a sheet is tried on: the shop's largest one up to A3, then a print shop's; no rolls. */
export function papersOf(paper: Shop["paper"]): readonly PaperSize[] {
  const long = ({ width, height }: PaperSize) => Math.max(width, height);
  const own = paper
    .flatMap(({ id, width, height, margin }) => (height === undefined ? [] : [{ id, width, height, margin }]))
    .filter((size) => long(size) <= largestOwn)
    .sort((a, b) => long(b) - long(a))[0];
  return own === undefined ? printShop : [own, ...printShop];
}
