import type { Point } from "../../geometry/point.ts";
import { baseFromMiddle, lettering } from "../sheet/lettering.ts";
import type { Marks, SheetText, Weight } from "../sheet/sheet.ts";
import { spreadOut } from "../sheet/spread-out.ts";
import { stroke } from "../sheet/strokes.ts";
import { said } from "./plot-paper.ts";

/**
 * A bow's line through a place on paper: degrees from level, positive where it falls to the right; the strings that it touches, how
 * it is drawn, and its words.
 */
export type BowLine = {
  readonly through: Point;
  readonly touches: readonly Point[];
  readonly fall: number;
  readonly weight: Weight;
  readonly words: string;
};

/** The least distance of the lines' words, and how far a line reaches past its strings to its rising side; mm on paper. */
const apart = 4.6;
const rising = 22;

/** Where a line is at some x on paper. */
function lineAt({ through, fall }: BowLine, x: number): Point {
  return { x, y: through.y - Math.tan((fall * Math.PI) / 180) * (x - through.x) };
}

/**
 * Bow's lines from a little past their strings on the rising side down to `reach` right or left of the middle (mm on paper), their
 * words at that end, kept apart. A level line goes to the right.
 */
export function bowLines(lines: readonly BowLine[], reach: number): Marks[] {
  return ([1, -1] as const).map((side) => {
    const own = lines.filter(({ fall }) => fall >= 0 === (side === 1));
    const ends = own.map((line) => lineAt(line, side * reach));
    const heights = spreadOut(
      ends.map(({ y }) => y),
      apart,
    );
    return {
      lines: own.map((line, i) => stroke(line.weight, riseOf(line, side), ends[i]!)),
      texts: own.map(({ words }, i): SheetText => {
        const y = heights[i]! + baseFromMiddle(lettering.height);
        return said(words, side * (reach + 1.5), y, side === 1 ? "left" : "right");
      }),
    };
  });
}

function riseOf(line: BowLine, side: 1 | -1): Point {
  const last = Math.min(...line.touches.map(({ x }) => side * x));
  return lineAt(line, side * (last - rising * Math.cos((line.fall * Math.PI) / 180)));
}
