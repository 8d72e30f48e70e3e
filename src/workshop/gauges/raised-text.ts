import type { Path } from "../../geometry/path.ts";
import type { Point } from "../../geometry/point.ts";
import type { Outline, Solid } from "../../geometry/solid/solid.ts";
import { textStrokes } from "../../geometry/text-strokes.ts";
import { strokeBands } from "./stroke-bands.ts";

/**
 * Lines of text that stand out of a flat face: the height of their capitals, the width of a stroke, and how far out; mm. Strokes are bands with
 * square ends: a quarter of the corners that rounded ends would have, and less than half of the time to join them.
 */
export type RaisedText = {
  readonly lines: readonly string[];
  readonly height: number;
  readonly stroke: number;
  readonly raised: number;
};

/** Lines of text stand so many heights apart. */
const lineStep = 1.7;

/** How wide and how high lines of text are with their strokes, mm. */
export function textSize({ lines, height, stroke }: RaisedText): { width: number; height: number } {
  const width = Math.max(...lines.map((line) => textStrokes(line, height).width));
  return { width: width + stroke, height: height * (1 + lineStep * (lines.length - 1)) + stroke };
}

/**
 * The solid of lines of text, each centred on `x` and the uppermost with its capitals' tops at `y`, that stands on the level
 * z = `face` and reaches a little under it, so that it is one with the part that it is joined to.
 */
export function raisedText(text: RaisedText, x: number, y: number, face: number): Solid {
  const outlines = text.lines.flatMap((line, i) => {
    const { strokes, width } = textStrokes(line, text.height);
    const at = { x: x - width / 2, y: y - text.height * (1 + lineStep * i) };
    return strokes.flatMap((stroke) => bands(stroke, text.stroke / 2, at));
  });
  const reach = text.raised / 2;
  return { kind: "extrude", outlines, base: face - reach, height: text.raised + reach };
}

function bands(stroke: Path, radius: number, at: Point): Outline[] {
  const { points } = stroke;
  const moved = { closed: false, points: points.map((p) => ({ ...p, x: p.x + at.x, y: p.y + at.y })) };
  return strokeBands(moved, radius).map((outer) => ({ outer, holes: [] }));
}
