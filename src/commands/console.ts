import colours from "picocolors";
import { colouring, type Outlets } from "./colouring.ts";

type Colours = ReturnType<typeof colours.createColors>;

/** What a command may say: results to standard output, everything else to standard error. */
export type Console = {
  /** A message for people; not with --quiet. */
  readonly say: (text: string) => void;
  /** A result: the one thing on standard output. */
  readonly print: (text: string) => void;
  /** A progress line: only on a terminal, and only once a job has taken a second. */
  readonly progress: (text: string) => void;
  /** Colours for messages. */
  readonly colour: Colours;
  /** Colours for results: none when they go into a file or a pipe. */
  readonly ink: Colours;
  readonly json: boolean;
};

/** Options that every command takes. */
export type Common = { readonly json: boolean; readonly quiet: boolean };

/** What a console stands on: its outlets, a clock in milliseconds, and where text goes. */
export type Surroundings = Outlets & {
  readonly now: () => number;
  readonly toStderr: (text: string) => void;
  readonly toStdout: (text: string) => void;
};

/** Milliseconds that a job takes before it shows how far it is. */
const slow = 1000;

/** The console of one command: what is said, shown and coloured depends on nothing but its options and its surroundings. */
export function consoleFor({ json, quiet }: Common, around: Surroundings = here()): Console {
  const { stderrTty, now, toStderr, toStdout } = around;
  const coloured = colouring(around);
  const began = now();
  return {
    say: (text) => {
      if (!quiet) toStderr(`${text}\n`);
    },
    print: toStdout,
    progress: (text) => {
      if (stderrTty && !quiet && now() - began > slow) toStderr(`\r\u001b[K${text}`);
    },
    colour: colours.createColors(coloured.messages),
    ink: colours.createColors(coloured.results),
    json,
  };
}

function here(): Surroundings {
  return {
    ...{ stderrTty: process.stderr.isTTY === true, stdoutTty: process.stdout.isTTY === true },
    ...{ env: process.env, now: () => performance.now() },
    toStderr: (text) => void process.stderr.write(text),
    toStdout: (text) => void process.stdout.write(text),
  };
}
