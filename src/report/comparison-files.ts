import type { MovedFiles } from "./compare-files.ts";
import { markdownTable } from "./markdown.ts";

/** The files that differ as plain text, a line for each name; nothing where none does. */
export function filesText(files: readonly MovedFiles[]): string {
  return files.map(({ name, endings, kind }) => `${name}  ${endings.join(", ")}  ${kind}\n`).join("");
}

/** The files that differ as a Markdown table, with the name of the picture to look at; nothing where none does. */
export function filesMarkdown(files: readonly MovedFiles[]): string {
  if (files.length === 0) return "";
  const rows = files.map(({ name, endings, kind, picture }) => {
    return [name, endings.join(", "), kind, picture === null ? "" : `\`${picture}\``];
  });
  return `\nFiles that rest on something else, by fingerprint:\n\n${markdownTable(["file", "endings", "how", "picture"], rows)}\n`;
}
