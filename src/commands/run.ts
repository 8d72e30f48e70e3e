import type { Problem } from "../order/problem.ts";
import { problemText } from "../order/problem.ts";
import { type Common, type Console, consoleFor } from "./console.ts";
import { troubleOf } from "./trouble.ts";

/** What a command ends with. */
export const exit = { done: 0, differs: 1, input: 2, failed: 3 } as const;

/**
 * Run a command and turn whatever comes of it into an exit status: what a person wrote wrong is told without a stack trace and
 * ends with 2, anything else that fails with 3. `writesTo` is the argument that says where the command writes.
 */
export async function run(
  common: Common,
  command: (console: Console) => Promise<number> | number,
  writesTo = "",
): Promise<void> {
  const console = consoleFor(common);
  process.stdout.on("error", (error: NodeJS.ErrnoException) => {
    if (error.code === "EPIPE") process.exit(exit.done);
    process.exit(endedBy(error, { ...console, json: false }, writesTo));
  });
  try {
    process.exitCode = await command(console);
  } catch (error) {
    process.exitCode = endedBy(error, console, writesTo);
  }
}

/** Tell what stopped a command, with --json as data too, and give the status that it ends with. */
export function endedBy(error: unknown, console: Console, writesTo: string): number {
  const trouble = troubleOf(error, writesTo);
  if (trouble.kind === "input") {
    tellProblems(console, trouble.problems);
    return exit.input;
  }
  const { code, message } = trouble;
  if (console.json) console.print(`${JSON.stringify({ failed: { code, message } }, undefined, 2)}\n`);
  process.stderr.write(`${console.colour.red("failed")}: ${message}\n`);
  return exit.failed;
}

/** Tell problems of the input on standard error, and with --json as data on standard output. */
export function tellProblems({ json, print, colour }: Console, problems: readonly Problem[]): void {
  if (json) print(`${JSON.stringify({ problems }, undefined, 2)}\n`);
  for (const problem of problems) process.stderr.write(`${colour.red("problem")} ${problemText(problem)}\n`);
}
