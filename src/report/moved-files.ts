import type { Compared } from "./junit.ts";
import { markdownTable } from "./markdown.ts";

/**
 * The files that differ by fingerprint over all orders, by file and then by order, so that a drawing that moved everywhere stands in one block; with the
 * picture to look at. Nothing where no file differs, or where reports alone were compared.
 */
export function movedFiles(all: readonly Compared[], format: "text" | "markdown"): string {
  const rows = all
    .flatMap(({ name: order, files }) => (files ?? []).map((file) => ({ order, ...file })))
    .sort((a, b) => (a.name === b.name ? (a.order < b.order ? -1 : 1) : a.name < b.name ? -1 : 1));
  if (rows.length === 0) return "";
  if (format === "text")
    return rows
      .map(({ name, order, endings, kind }) => `${name}  ${order}  ${endings.join(", ")}  ${kind}\n`)
      .join("");
  const cells = rows.map(({ name, order, endings, kind, picture }) => [
    ...[name, order, endings.join(", "), kind, picture === null ? "" : `\`${order}/${picture}\``],
  ]);
  const head = ["file", "order", "endings", "how", "picture"];
  return `\nFiles that rest on something else, by fingerprint:\n\n${markdownTable(head, cells)}\n`;
}
