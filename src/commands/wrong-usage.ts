import { consoleFor } from "./console.ts";
import { endedBy, exit, tellProblems } from "./run.ts";
import { usageProblems } from "./usage-problems.ts";

/**
 * Tell what is wrong with a command line and end with the status for wrong input; with --json on it the problems are told as data
 * too. Where there is no `message` of the parser, it is the program that failed.
 */
export function wrongUsage(message: string | undefined, error: unknown, args: readonly string[]): void {
  const given = (name: string) => args.includes(`--${name}`) || args.includes(`--${name}=true`);
  const console = consoleFor({ json: given("json"), quiet: given("quiet") });
  if (message === undefined) {
    process.exitCode = endedBy(error, console, "");
    return;
  }
  tellProblems(console, usageProblems(message, args));
  console.say("    patternloft --help lists commands and options");
  process.exitCode = exit.input;
}
