import type { Page } from "../tiles/tile-page.ts";
import type { Sheet } from "./sheet.ts";

/** A sheet as a page of a file that is printed: its own paper, no printer's scale taken off, since nothing is measured from it. */
export function sheetPage({ paper, lines, texts }: Sheet): Page {
  const marks = { lines, texts };
  return { paper, scale: [1, 1], groups: [{ name: "sheet", marks, shift: { x: 0, y: 0 }, clip: null }] };
}
