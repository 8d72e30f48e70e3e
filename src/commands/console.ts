import colours from "picocolors";
import { InputError, type Problem, problemText } from "../order/problem.ts";
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

/** What a command ends with. */
export const exit = { done: 0, differs: 1, input: 2, failed: 3 } as const;

/**
 * Run a command and turn whatever comes of it into an exit status: what a person wrote wrong is told without a stack trace and
 * ends with 2, anything else that fails with 3.
 */
export async function run(
  common: Common,
  command: (console: Console) => Promise<number> | number,
): Promise<void> {
  const console = consoleFor(common);
  process.stdout.on("error", (error: NodeJS.ErrnoException) => {
    if (error.code === "EPIPE") process.exit(exit.done);
  });
  try {
    process.exitCode = await command(console);
  } catch (error) {
    if (error instanceof InputError) {
      process.exitCode = exit.input;
      tellProblems(console, error.problems);
    } else {
      process.exitCode = exit.failed;
      const said = error instanceof Error ? `${error.name}: ${error.message}` : String(error);
      process.stderr.write(`${console.colour.red("failed")}: ${said}\n`);
    }
  }
}

function tellProblems({ json, print, colour }: Console, problems: readonly Problem[]): void {
  if (json) print(`${JSON.stringify({ problems }, undefined, 2)}\n`);
  for (const problem of problems) process.stderr.write(`${colour.red("problem")} ${problemText(problem)}\n`);
}
