import { z } from "zod";

/** A word that names something: letters, digits, dots and hyphens, beginning with a letter or a digit. */
export function word(about: string) {
  return z
    .string({ error: "a name" })
    .regex(/^[A-Za-z0-9][A-Za-z0-9.#-]*$/, { error: "a name of letters, digits, dots and hyphens" })
    .meta({ description: about });
}

/** One line of plain text, not empty. */
export function line(about: string) {
  return z
    .string({ error: "a line of text" })
    .regex(/^[^\u0000-\u001f\u007f]*\S[^\u0000-\u001f\u007f]*$/, { error: "a line of text, not empty" })
    .meta({ description: about });
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
