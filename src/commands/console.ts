import colours from "picocolors";
import { InputError, type Problem, problemText } from "../order/problem.ts";

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

const slow = 1000;

/** The console of one command; colour only on a terminal and never where NO_COLOR is set. */
export function consoleFor({ json, quiet }: Common): Console {
  const terminal = process.stderr.isTTY === true;
  const plain = (process.env.NO_COLOR ?? "") !== "" || process.env.TERM === "dumb";
  const began = performance.now();
  return {
    say: (text) => {
      if (!quiet) process.stderr.write(`${text}\n`);
    },
    print: (text) => void process.stdout.write(text),
    progress: (text) => {
      if (terminal && !quiet && performance.now() - began > slow) process.stderr.write(`\r\u001b[K${text}`);
    },
    colour: colours.createColors(terminal && !plain),
    ink: colours.createColors(process.stdout.isTTY === true && !plain),
    json,
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
