import { lettering } from "../../drawing/sheet/lettering.ts";
import { textStrokes } from "../../geometry/text-strokes.ts";

/** What a letter is drawn in: thousandths of the type's size. */
const unit = 1000;

const advance = lettering.advance * unit;
const capital = lettering.cap * unit;

/** How wide a letter's strokes may be: the rest of the advance is white. */
const widest = 450;

/** Letters are drawn a little narrower than they come, so that lines of them read as type does. */
const narrowed = 0.72;

/** A letter that the lettering lacks. */
export class LacksLetterError extends RangeError {
  constructor(letter: string, text: string) {
    super(
      `the lettering has no ${JSON.stringify(letter)} (in ${JSON.stringify(text)}): plain letters, digits and signs of ASCII only`,
    );
    this.name = "LacksLetterError";
  }
}

/** Throws a LacksLetterError for a text with a letter that can't be drawn: nothing is ever put in its place. */
export function mustLetter(text: string): void {
  for (const letter of text) if (!/^[ -~]$/.test(letter)) throw new LacksLetterError(letter, text);
}

/** How far each letter takes the pen on, in thousandths of the type's size: all the same. */
export const letterAdvance = advance;

/**
 * What draws one letter in a PDF font of the third kind: its strokes, standing on 0 and 0.64 high, in the middle of an advance of 0.6 of the
 * type's size, so that boxes of texts hold whatever draws them.
 */
export function letterProcedure(letter: string): string {
  const { strokes, width } = textStrokes(letter, capital);
  const across = Math.min(narrowed, widest / Math.max(width, 1));
  const left = (advance - width * across) / 2;
  const at = ({ x, y }: { x: number; y: number }) => `${Math.round(left + x * across)} ${Math.round(y)}`;
  const lines = strokes.map(({ points }) =>
    points.map((point, i) => `${at(point)} ${i === 0 ? "m" : "l"}`).join(" "),
  );
  return `${advance} 0 d0 66 w 1 J 1 j ${lines.length === 0 ? "" : `${lines.join(" ")} S`}`;
}
