import { didYouMean } from "../order/nearest.ts";
import { exit } from "./console.ts";

/** What can be typed after two hyphens. */
const options = ["strings", "hand", "set", "only", "out", "format", "json", "quiet", "help", "version"];

/** Tell what is wrong with a command line, with the nearest option for a mistyped one, and end with the status for wrong input. */
export function wrongUsage(message: string): never {
  const [, names] = /^Unknown arguments?: (.*)$/.exec(message) ?? [];
  const hints = (names ?? "")
    .split(", ")
    .map((name) => (name === "" ? "" : didYouMean(name.replace(/^-+/, ""), options)));
  const hint = [...new Set(hints.filter((text) => text !== ""))].join(" ");
  const said = message.startsWith("Not enough non-option")
    ? "what to work on is missing: name orders or files"
    : message;
  process.stderr.write(`problem command line: ${said}\n${hint === "" ? "" : `    try: ${hint}\n`}`);
  process.stderr.write("    patternloft --help lists commands and options\n");
  process.exit(exit.input);
}
