import { letterHeight, type Note } from "./flat.ts";

/** A level line of text of the usual height, mm. */
export function lineNote(text: string, x: number, y: number, align: Note["align"]): Note {
  return { text, x, y, height: letterHeight, turn: 0, align };
}
