import { wrapped } from "../sheet/wrapped.ts";
import type { Note } from "./flat.ts";
import { longestNote } from "./longest-note.ts";

/**
 * The notes of a drawing with those of its sentences that were broken into lines put together again, each where its first line stands. What is no run of lines of
 * one of the sentences stays as it is.
 */
export function wholeNotes(notes: readonly Note[], sentences: readonly string[]): readonly Note[] {
  const broken = sentences
    .map((text) => ({ text, lines: wrapped(text, longestNote) }))
    .filter(({ lines }) => lines.length > 1);
  const whole: Note[] = [];
  for (let i = 0; i < notes.length; ) {
    const note = notes[i]!;
    const own = broken.find(({ lines }) => lines.every((line, k) => notes[i + k]?.text === line));
    whole.push(own === undefined ? note : { ...note, text: own.text });
    i += own?.lines.length ?? 1;
  }
  return whole;
}
