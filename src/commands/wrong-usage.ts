import { consoleFor } from "./console.ts";
import { endedBy, exit, tellProblems } from "./run.ts";
import { usageProblems } from "./usage-problems.ts";

/**
 * Tell what is wrong with a command line and end with the status for wrong input; with --json on it the problems are told as data
 * too. Where there is no `message` of the parser, it is the program that failed.
 */
export function wrongUsage(message: string | undefined, error: unknown, args: readonly string[]): void {
  const console = consoleFor({ json: args.some((arg) => /^--json(=true)?$/.test(arg)), quiet: false });
  if (message === undefined) {
    process.exitCode = endedBy(error, console, "");
    return;
  }
  tellProblems(console, usageProblems(message, args));
  console.say("    patternloft --help lists commands and options");
  process.exitCode = exit.input;
}
