/** A table as a renderer of GitHub-flavoured Markdown takes it: its head, which columns stand to the right, and its rows. */
export type ReadTable = {
  readonly head: readonly string[];
  readonly right: readonly boolean[];
  readonly rows: readonly (readonly string[])[];
};

/**
 * The tables of a Markdown text, read by the rules of the GFM specification, section 4.10: a table is a block of its own, its second line is made of dashes
 * with as many cells as the first, a bar in a cell stands after a backslash. Throws for lines with bars that a renderer would show as they are, or
 * for a row whose cells are too many or too few, which it would drop or fill up.
 */
export function readTables(text: string): ReadTable[] {
  return text.split(/\n{2,}/).flatMap((block): ReadTable[] => {
    const lines = block.split("\n").filter((line) => line !== "");
    if (!lines.some((line) => line.startsWith("|"))) return [];
    const [head, rule, ...rows] = lines.map(cellsOf);
    if (head === undefined || rule === undefined || !rule.every((cell) => /^:?-+:?$/.test(cell)))
      throw new Error(`no table: ${lines[0]}`);
    for (const [i, row] of [rule, ...rows].entries())
      if (row.length !== head.length)
        throw new Error(`${row.length} cells, not ${head.length}: ${lines[i + 1]}`);
    return [{ head, right: rule.map((cell) => /^-+:$/.test(cell)), rows }];
  });
}

function cellsOf(line: string): string[] {
  if (!/^\|.*[^\\]\|$/.test(line)) throw new Error(`no row: ${line}`);
  return line
    .slice(1, -1)
    .split(/(?<!\\)\|/)
    .map((cell) => cell.trim().replaceAll("\\|", "|"));
}
