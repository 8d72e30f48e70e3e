import type { Note } from "./flat.ts";
import { longestNote } from "./longest-note.ts";

/**
 * The notes of a drawing with what was broken into lines put together again: a note goes on in the next one where that stands right under it, lettered alike, and
 * begins with a word that its line had no room for, and with no signal word. A whole note stands where its first line does.
 */
export function wholeNotes(notes: readonly Note[]): readonly Note[] {
  const whole: { first: Note; text: string; last: Note }[] = [];
  for (const note of notes) {
    const before = whole.at(-1);
    if (before === undefined || !goesOn(before.last, note))
      whole.push({ first: note, text: note.text, last: note });
    else whole[whole.length - 1] = { ...before, text: `${before.text} ${note.text}`, last: note };
  }
  return whole.map(({ first, text }) => ({ ...first, text }));
}

/** How far lines of one note may stand apart, as a share of the height of their letters. */
const farthest = 2;

function goesOn(line: Note, next: Note): boolean {
  const under = line.y - next.y;
  const word = next.text.split(" ")[0]!;
  return (
    line.turn === 0 &&
    next.turn === 0 &&
    line.align === next.align &&
    line.height === next.height &&
    Math.abs(line.x - next.x) < 1e-6 &&
    under > 0 &&
    under < farthest * line.height &&
    line.text.length + 1 + word.length > longestNote &&
    !/^(DANGER|WARNING|CAUTION|NOTICE):$/.test(word)
  );
}
