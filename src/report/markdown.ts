/** A Markdown table; numbers of the columns named in `right` stand to the right. Bars in cells are escaped. */
export function markdownTable(
  head: readonly string[],
  rows: readonly (readonly string[])[],
  right: readonly string[] = [],
) {
  const line = (cells: readonly string[]) =>
    `| ${cells.map((cell) => cell.replaceAll("|", "\\|")).join(" | ")} |`;
  const rule = head.map((name) => (right.includes(name) ? "---:" : "---"));
  return [line(head), line(rule), ...rows.map(line)].join("\n");
}

/** A number as people read it: at most three decimals for lengths and angles, none of them idle. */
export function readable(value: number): string {
  return String(Math.round(value * 1000) / 1000 + 0);
}
