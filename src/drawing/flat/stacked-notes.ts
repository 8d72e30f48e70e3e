import { letterHeight, type Note } from "./flat.ts";
import { lineNote } from "./line-note.ts";

/** Lines of text above one another, the first one at the top, the last one at y. */
export function stackedNotes(lines: readonly string[], x: number, y: number): Note[] {
  return lines.map((text, i) => lineNote(text, x, y + (lines.length - 1 - i) * letterHeight * 1.7, "left"));
}
