import { semitone } from "./semitone.ts";

/** Semitones from C within an octave, by letter. */
const letters: { readonly [letter: string]: number } = { C: 0, D: 2, E: 4, F: 5, G: 7, A: 9, B: 11 };

const form = /^([A-G])(#|b)?(\d)$/;

/**
 * A pitch as semitones above A4, from its scientific name: a letter, # or b, and the octave (C4 is the C below A4).
 * `undefined` for a text of another form.
 */
export function semitonesFromA4(name: string): number | undefined {
  const [, letter, accidental, octave] = form.exec(name) ?? [];
  if (letter === undefined) return undefined;
  const shift = accidental === "#" ? 1 : accidental === "b" ? -1 : 0;
  return letters[letter]! + shift + 12 * Number(octave) - 57;
}

/** The frequency, Hz, of a pitch some semitones above A4 in equal temperament; `a4` in Hz. */
export function frequency(semitones: number, a4: number): number {
  return a4 * semitone(semitones);
}

/** The pitch standard, Hz. */
export const concertA4 = 440;
