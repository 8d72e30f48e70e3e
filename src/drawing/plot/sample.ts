import { rectangle } from "../../geometry/rectangle.ts";
import { hatched } from "../sheet/hatch.ts";
import type { Marks } from "../sheet/sheet.ts";
import type { Filling } from "./bar.ts";
import { said } from "./plot-paper.ts";

/** A small piece of a filling and what it stands for, its words' base line starting from `x`, `y` on paper. */
export function sample(filling: Filling, words: string, x: number, y: number): Marks {
  const path = rectangle(x, y - 0.3, x + 7, y + 2.8);
  const inside = filling === "hatched" ? hatched([path], 1.2) : [];
  return { lines: [...inside, { weight: "edge", path }], texts: [said(words, x + 9, y)] };
}
