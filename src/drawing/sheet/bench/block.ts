import { lettering, textLength, typeSize } from "../lettering.ts";
import { moved } from "../moved.ts";
import type { Marks, SheetText } from "../sheet.ts";
import { wrapped } from "../wrapped.ts";

/** Marks of a known height, mm: they hang down from (0, 0). */
export type Block = { readonly high: number; readonly marks: Marks };

/** A block as wide as it is told to be, mm. */
export type Row = (wide: number) => Block;

/**
 * Rows under a head, which is written again where they go on in the next column. Those of a `whole` section stand together where a column
 * has room for all of them.
 */
export type Section = { readonly head: Row | null; readonly rows: readonly Row[]; readonly whole?: true };

/** From one line of a block to the next, and what is kept free at the sides and over and under its text, mm. */
export const blockSteps = { line: 4.4, aside: 1.2, over: 0.9 } as const;

const size = typeSize(lettering.height);

/** How many letters go into a width, mm, less what is kept free at its sides; at least one. */
export function lettersIn(wide: number, height: number = lettering.height): number {
  const free = wide - 2 * blockSteps.aside;
  return Math.max(1, Math.floor(free / textLength({ text: "0", height }) + 1e-9));
}

/** How high so many lines of text stand with what is kept free round them, mm. */
export function linesHigh(count: number): number {
  const { line, over } = blockSteps;
  return 2 * over + (lettering.ascent + lettering.descent) * size + (count - 1) * line;
}

/** A text broken into lines of a width, at `x` from the left and hanging down from `top`, mm. */
export function hung(text: string, x: number, top: number, wide: number): SheetText[] {
  const { line, aside, over } = blockSteps;
  return wrapped(atHyphens(text, lettersIn(wide)), lettersIn(wide)).map((one, i) => ({
    ...{ text: one, x: x + aside, y: top - over - lettering.ascent * size - i * line },
    ...{ height: lettering.height, turn: 0, align: "left" },
  }));
}

/** A text whose words that are longer than a line are parted after their hyphens, each part as long as a line holds. */
function atHyphens(text: string, letters: number): string {
  const parted = (word: string): string => {
    if (word.length <= letters) return word;
    const cut = word.lastIndexOf("-", letters - 1) + 1;
    return cut === 0 ? word : `${word.slice(0, cut)} ${parted(word.slice(cut))}`;
  };
  return text.split(" ").map(parted).join(" ");
}

/** A paragraph over the whole width. */
export function paragraph(text: string): Row {
  return (wide) => {
    const texts = hung(text, 0, 0, wide);
    return { high: linesHigh(texts.length), marks: { lines: [], texts } };
  };
}

/** A heading over the whole width, in larger letters. */
export function heading(text: string): Row {
  const height = lettering.title;
  const big = typeSize(height);
  return (wide) => {
    const texts = wrapped(text, lettersIn(wide, height)).map((one, i): SheetText => {
      const y = -1.5 - lettering.ascent * big - i * 1.35 * big;
      return { text: one, x: blockSteps.aside, y, height, turn: 0, align: "left" };
    });
    const high = 1.5 + (lettering.ascent + lettering.descent) * big + (texts.length - 1) * 1.35 * big + 0.6;
    return { high, marks: { lines: [], texts } };
  };
}

/** Blocks under one another as one. */
export function stackedBlocks(blocks: readonly Block[]): Block {
  let high = 0;
  const parts = blocks.map((block) => {
    const there = moved(block.marks, 0, -high);
    high += block.high;
    return there;
  });
  return {
    high,
    marks: { lines: parts.flatMap(({ lines }) => lines), texts: parts.flatMap(({ texts }) => texts) },
  };
}
