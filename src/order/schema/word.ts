import { z } from "zod";
import { lettered } from "../lettering.ts";

/** A word that names something: letters, digits, dots and hyphens, beginning with a letter or a digit. */
export function word(about: string) {
  return z
    .string({ error: "a name" })
    .regex(/^[A-Za-z0-9][A-Za-z0-9.-]*$/, { error: "a name of letters, digits, dots and hyphens" })
    .meta({ description: about });
}

/** A string's name: that of a pitch, such as E5, Bb1 or C#4, so that its dimensions have names of one form. */
export function stringName(about: string) {
  return z
    .string({ error: "a string's name such as E5 or Bb1" })
    .regex(/^[A-G][#b]?\d$/, { error: "a string's name such as E5 or Bb1" })
    .meta({ description: about });
}

/** One line of plain text, not empty. */
export function line(about: string) {
  return z
    .string({ error: "a line of text" })
    .regex(/^[^\u0000-\u001f\u007f]*\S[^\u0000-\u001f\u007f]*$/, { error: "a line of text, not empty" })
    .meta({ description: about });
}

/** One line of text that will be lettered on a drawing, not empty, in letters that can be spelled there. */
export function lettering(about: string) {
  return line(about).refine((text) => lettered(text) !== undefined, {
    error: "letters that a drawing's lettering can spell: Latin ones, with or without accents",
  });
}

/** One of a few words. */
export function oneOf<const Words extends readonly [string, ...string[]]>(words: Words, about: string) {
  return z.enum(words, { error: words.join(", ") }).meta({ description: about });
}

/** A calendar day, such as 2026-10-02. */
export function day(about: string) {
  return z
    .string({ error: "a day such as 2026-10-02" })
    .regex(/^\d{4}-(0[1-9]|1[0-2])-(0[1-9]|[12]\d|3[01])$/, { error: "a day such as 2026-10-02" })
    .meta({ description: about });
}
