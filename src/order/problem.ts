/** Where in something that a person wrote: lines and columns count from 1. */
export type Position = { readonly file: string; readonly line: number; readonly column: number };

/**
 * Something wrong in what a person wrote, as data.
 *
 * `code` is stable, for programs; `name` is the dotted name that it is about; `found` is quoted as it was written;
 * `allowed` and `hint` say what would be right and what to try.
 */
export type Problem = {
  readonly code: ProblemCode;
  readonly position: Position;
  readonly name: string;
  readonly found: string;
  readonly allowed: string;
  readonly hint: string;
};

/** The kinds of problem that an input can have. */
export type ProblemCode =
  | "unreadable"
  | "syntax"
  | "alias"
  | "unknown-key"
  | "missing"
  | "type"
  | "unit"
  | "range"
  | "count"
  | "order-of-strings"
  | "unknown-name"
  | "derived"
  | "id"
  | "overrule"
  | "contradiction";

/** A result, or all that stands in its way. */
export type Checked<T> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly problems: readonly Problem[] };

/** A problem in one or two lines of plain text for a terminal or a log. */
export function problemText({ position, name, found, allowed, hint }: Problem): string {
  const where =
    position.file === commandLine ? commandLine : `${position.file}:${position.line}:${position.column}`;
  const try_ = hint === "" ? "" : `\n    try: ${hint}`;
  return `${where}: ${name === "" ? "" : `${name}: `}found ${found}; allowed: ${allowed}${try_}`;
}

/** Stands for a file's name in the position of a value that was given as an option. */
export const commandLine = "command line";

/** Thrown at the edge only, where problems end a command; it carries them as data. */
export class InputError extends Error {
  readonly problems: readonly Problem[];
  constructor(problems: readonly Problem[]) {
    super(problems.map(problemText).join("\n"));
    this.name = "InputError";
    this.problems = problems;
  }
}

/** What a person wrote, in quotes, shortened, with control characters made visible. */
export function quoted(text: string): string {
  const shown = text.length > 60 ? `${text.slice(0, 57)}...` : text;
  return JSON.stringify(shown);
}
