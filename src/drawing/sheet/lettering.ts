import { extentsOf } from "../../geometry/measure.ts";
import type { Box, Marks, SheetText } from "./sheet.ts";

/**
 * How texts of a sheet are lettered. They are written in a monospaced type, so that the box of a text is known without the
 * type itself: every letter is `advance` of the type's size wide. `cap` is how high capitals are at least among the types that
 * a writer names, `ascent` and `descent` how far letters, brackets and commas reach at most over and under the base line; sheets are lettered in capitals, so nothing hangs lower.
 */
export const lettering = {
  /** Height of capitals, mm; nothing smaller is written. */
  height: 2.5,
  /** Height of a view's name, mm. */
  title: 3.2,
  ...{ advance: 0.6, cap: 0.64, ascent: 0.76, descent: 0.15 },
} as const;

/** The size of type that gives capitals of a height, mm. */
export function typeSize(height: number): number {
  return height / lettering.cap;
}

/** How long a text is on paper, mm. */
export function textLength({ text, height }: Pick<SheetText, "text" | "height">): number {
  return [...text].length * lettering.advance * typeSize(height);
}

/** The box that a text takes up on paper, mm. */
export function textBox(of: SheetText): Box {
  const { x, y, height, turn, align } = of;
  const long = textLength(of);
  const size = typeSize(height);
  const start = { left: 0, center: -long / 2, right: -long }[align];
  const [up, down] = [lettering.ascent * size, lettering.descent * size];
  return turn === 0
    ? { minX: x + start, maxX: x + start + long, minY: y - down, maxY: y + up }
    : { minX: x - up, maxX: x + down, minY: y + start, maxY: y + start + long };
}

/** From the middle of a text's box to its base line, mm: negative, since the base line lies under the middle. */
export function baseFromMiddle(height: number): number {
  return (-(lettering.ascent - lettering.descent) / 2) * typeSize(height);
}

/** The box round lines and texts, mm; marks without a line or a text have none. */
export function boxOf({ lines, texts }: Marks): Box {
  const boxes = texts.map(textBox);
  const drawn = extentsOf(lines.map(({ path }) => path));
  if (drawn !== undefined) boxes.push(drawn);
  if (boxes.length === 0) throw new RangeError("nothing is drawn, so it has no box");
  return {
    minX: Math.min(...boxes.map(({ minX }) => minX)),
    minY: Math.min(...boxes.map(({ minY }) => minY)),
    maxX: Math.max(...boxes.map(({ maxX }) => maxX)),
    maxY: Math.max(...boxes.map(({ maxY }) => maxY)),
  };
}
