import lettering from "@jscad/modeling/src/text/index.js";
import { extentsOf } from "./measure.ts";
import type { Path } from "./path.ts";

/** How high the package's capitals stand for a height of 1. */
const capital = 1.5;

/**
 * The strokes of a line of text as open paths, mm: `height` is that of a capital; the text begins at x = 0 and stands on
 * y = 0. Plain ASCII only: for any other letter the font has a question mark. `width` is to the right end of the last stroke.
 */
export function textStrokes(text: string, height: number): { strokes: readonly Path[]; width: number } {
  // The package's own types say one level less than it gives.
  const lines = lettering.vectorText({ height: height / capital }, text) as unknown as readonly (readonly [
    number,
    number,
  ])[][];
  const strokes = lines
    .map((points) => ({ closed: false, points: points.map(([x, y]) => ({ x, y, bulge: 0 })) }))
    .filter(({ points }) => points.length > 1);
  return { strokes, width: extentsOf(strokes)?.maxX ?? 0 };
}
