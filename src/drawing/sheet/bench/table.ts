import type { Marks, SheetLine } from "../sheet.ts";
import { stroke } from "../strokes.ts";
import { type Block, heading, hung, linesHigh, type Row, type Section, stackedBlocks } from "./block.ts";

/** A table's column: its name and its share of the width. */
export type Column = { readonly name: string; readonly share: number };

/** A ruled table under a heading. Texts are broken within their cells; `least` is how high a row is at least, mm, for what is written by hand. */
export function table(
  title: string,
  columns: readonly Column[],
  rows: readonly (readonly string[])[],
  { least = 0 }: { readonly least?: number } = {},
): Section {
  const named = columns.map(({ name }) => name);
  const head: Row = (wide) => stackedBlocks([heading(title)(wide), ruled(columns, named, wide, 0, true)]);
  return { head, rows: rows.map((cells) => (wide) => ruled(columns, cells, wide, least, false)) };
}

/** One row between its rules; the first has a rule over it too. */
function ruled(
  columns: readonly Column[],
  cells: readonly string[],
  wide: number,
  least: number,
  first: boolean,
): Block {
  const sum = columns.reduce((all, { share }) => all + share, 0);
  let x = 0;
  const lefts = columns.map(({ share }) => {
    const left = x;
    x += (share / sum) * wide;
    return left;
  });
  const ends = [...lefts.slice(1), wide];
  const hangs = columns.map((_, i) => hung(cells[i] ?? "", lefts[i]!, 0, ends[i]! - lefts[i]!));
  const high = Math.max(least, ...hangs.map((texts) => linesHigh(Math.max(1, texts.length))));
  const level = (y: number) => stroke(first ? "edge" : "extension", { x: 0, y }, { x: wide, y });
  const upright = (at: number): SheetLine => stroke("extension", { x: at, y: 0 }, { x: at, y: -high });
  const lines = [...(first ? [level(0)] : []), level(-high), ...[0, ...ends].map(upright)];
  const marks: Marks = { lines, texts: hangs.flat() };
  return { high, marks };
}
