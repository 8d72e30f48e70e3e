import type { Path } from "../../geometry/path.ts";
import { rectangle } from "../../geometry/rectangle.ts";
import { hatched } from "../sheet/hatch.ts";
import type { SheetLine } from "../sheet/sheet.ts";
import { stroke } from "../sheet/strokes.ts";

/** Bars are told apart by what is in them, never by colour. */
export type Filling = "hatched" | "open";

const hatching = 1.6;

/**
 * An upright bar on paper, `wide` mm and `x` in its middle, from `from` to `to` whichever is higher. One of no height is a line.
 */
export function bar(x: number, wide: number, from: number, to: number, filling: Filling): SheetLine[] {
  const [left, right] = [x - wide / 2, x + wide / 2];
  const [low, high] = [Math.min(from, to), Math.max(from, to)];
  if (high - low < 1e-6) return [stroke("bar", { x: left, y: low }, { x: right, y: low })];
  const path: Path = rectangle(left, low, right, high);
  return [...(filling === "hatched" ? hatched([path], hatching) : []), { weight: "bar", path }];
}
