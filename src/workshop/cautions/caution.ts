/**
 * Something that whoever works at a machine has to know. `signal` is the word that ANSI Z535 and ISO 3864 give it by
 * severity; `source` says where it is from.
 */
export type Caution = {
  readonly signal: "DANGER" | "WARNING" | "CAUTION" | "NOTICE";
  readonly text: string;
  readonly source: string;
};

/** A caution as one line of a sheet: its signal word, what it says, where it is from. */
export function inWords({ signal, text, source }: Caution): string {
  return `${signal}: ${text} (${source})`;
}
