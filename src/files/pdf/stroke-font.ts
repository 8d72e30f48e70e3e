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
      `the lettering has no ${JSON.stringify(letter)} (in ${JSON.stringify(text)}): plain letters, digits and signs of ASCII, and ± ° Ø only`,
    );
    this.name = "LacksLetterError";
  }
}

/** Signs beside those of ASCII, as strokes in thousandths of the type's size: of a tolerance, of degrees, of a diameter. */
const signs: Readonly<Record<string, string>> = {
  "±": "90 380 m 510 380 l 300 590 m 300 170 l 90 20 m 510 20 l",
  "°": "390 560 m 390 610 350 650 300 650 c 250 650 210 610 210 560 c 210 510 250 470 300 470 c 350 470 390 510 390 560 c h",
  Ø: "515 320 m 515 439 419 535 300 535 c 181 535 85 439 85 320 c 85 201 181 105 300 105 c 419 105 515 201 515 320 c h 110 20 m 490 620 l",
};

/** Throws a LacksLetterError for a text with a letter that can't be drawn: nothing is ever put in its place. */
export function mustLetter(text: string): void {
  for (const letter of text)
    if (!/^[ -~]$/.test(letter) && signs[letter] === undefined) throw new LacksLetterError(letter, text);
}

/** How far each letter takes the pen on, in thousandths of the type's size: all the same. */
export const letterAdvance = advance;

/**
 * What draws one letter in a PDF font of the third kind: its strokes, standing on 0 and 0.64 high, in the middle of an advance of 0.6 of the
 * type's size, so that boxes of texts hold whatever draws them.
 */
export function letterProcedure(letter: string): string {
  const sign = signs[letter];
  if (sign !== undefined) return `${advance} 0 d0 66 w 1 J 1 j ${sign} S`;
  const { strokes, width } = textStrokes(letter, capital);
  const across = Math.min(narrowed, widest / Math.max(width, 1));
  const left = (advance - width * across) / 2;
  const at = ({ x, y }: { x: number; y: number }) => `${Math.round(left + x * across)} ${Math.round(y)}`;
  const lines = strokes.map(({ points }) =>
    points.map((point, i) => `${at(point)} ${i === 0 ? "m" : "l"}`).join(" "),
  );
  return `${advance} 0 d0 66 w 1 J 1 j ${lines.length === 0 ? "" : `${lines.join(" ")} S`}`;
}
