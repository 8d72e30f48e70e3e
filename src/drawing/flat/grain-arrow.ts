import { type Flat, layers, lineBetween } from "./flat.ts";
import { lineNote } from "./line-note.ts";

/** Length of the arrow and of its barbs, mm. */
const sizes = { arrow: 60, barb: 3 };

/** An arrow along x that ends at a place and points both ways, since the grain has no head, with its name over it; mm. */
export function grainArrow(end: number, y: number): Flat {
  const { arrow, barb } = sizes;
  const x = end - arrow;
  const barbs = [1, -1].flatMap((up) => [
    lineBetween(x, y, x + barb, y + (up * barb) / 2),
    lineBetween(x + arrow, y, x + arrow - barb, y + (up * barb) / 2),
  ]);
  return {
    shapes: [lineBetween(x, y, x + arrow, y), ...barbs].map((path) => ({ layer: layers.note, path })),
    notes: [lineNote("GRAIN", x + arrow / 2, y + 1.5, "center")],
  };
}
