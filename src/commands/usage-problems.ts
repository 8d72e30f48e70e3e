import { didYouMean } from "../order/nearest.ts";
import { commandLine, type Problem, type ProblemCode, quoted } from "../order/problem.ts";
import { misgivenAs } from "./misgiven.ts";

const variant = ["strings", "hand", "set"];
const common = ["json", "quiet", "help", "version"];
const orders = { what: "orders", most: "any number of orders" };

/** What each command takes: its options by name, and what it works on. */
export const taken: Readonly<Record<string, { options: readonly string[]; what: string; most: string }>> = {
  make: { ...orders, options: [...variant, "only", "out", ...common] },
  check: { ...orders, options: [...variant, ...common] },
  compare: { what: "before, after", most: "two reports or packs", options: ["all", "format", ...common] },
  approve: { what: "order", most: "one order", options: common },
  new: { what: "file", most: "one file", options: common },
  completion: { what: "", most: "nothing more", options: common },
};

const valued = [...variant, "only", "out", "format"];

/**
 * What is wrong with a command line that the parser turned down with `message`, as data; `args` is what was typed after the
 * program's name. Always one problem at least.
 */
export function usageProblems(message: string, args: readonly string[]): Problem[] {
  if (args.includes("--")) return [bareHyphens];
  const words = args.filter((arg, i) => !isOption(arg) && !takesNext(args[i - 1]));
  const command = words[0];
  if (command === undefined) return unknownOptions("patternloft", common, args);
  const takes = taken[command];
  if (takes === undefined) return [unknownCommand(command)];
  if (message.startsWith("Unknown argument")) {
    const unknown = unknownOptions(command, takes.options, args);
    return unknown.length > 0 ? unknown : [tooMany(message, command, takes.most)];
  }
  const [, found, names] = /^([A-Z][^:]*: )(.*)$/s.exec(message) ?? [];
  const about = (names ?? "").split(", ");
  if (found === misgivenAs.twice) return about.map(twice);
  if (found === misgivenAs.empty) return about.map(empty);
  if (found === "Not enough arguments following: ") return about.map(noValue);
  if (message.startsWith("Not enough non-option")) return [nothingToWorkOn(takes.what, takes.most)];
  const given = /Given: ("[^"]*")/.exec(message)?.[1];
  if (given !== undefined) return [wrongFormat(given)];
  return [
    problem(
      "syntax",
      "",
      quoted(message),
      "a command line as --help shows it",
      `patternloft ${command} --help`,
    ),
  ];
}

function problem(code: ProblemCode, name: string, found: string, allowed: string, hint: string): Problem {
  return { code, position: { file: commandLine, line: 1, column: 1 }, name, found, allowed, hint };
}

const isOption = (arg: string) => /^-{1,2}[^\d\s-]/.test(arg);
const takesNext = (arg: string | undefined) =>
  arg?.startsWith("--") === true && valued.includes(arg.slice(2));
const listed = (options: readonly string[]) => options.map((name) => `--${name}`).join(", ");

const bareHyphens = problem(
  ...(["syntax", "", "--", "names and options without it"] as const),
  "write a name that begins with a hyphen as ./-name",
);

function unknownCommand(command: string): Problem {
  const known = Object.keys(taken);
  const hint = didYouMean(command, known, "patternloft --help lists the commands");
  return problem("unknown-name", "command", quoted(command), known.join(", "), hint);
}

/** Options that the command doesn't take; without a command, that none was named where nothing else is wrong. */
function unknownOptions(command: string, options: readonly string[], args: readonly string[]): Problem[] {
  const unknown = [...new Set(args.filter(isOption).map((arg) => arg.replace(/=.*$/s, "")))]
    .filter((arg) => !(arg.startsWith("--") && options.includes(arg.slice(2))))
    .map((arg) => unknownOption(arg, command, options));
  if (unknown.length > 0 || command !== "patternloft") return unknown;
  const known = Object.keys(taken).join(", ");
  return [problem("missing", "command", "none", known, "name a command first")];
}

function unknownOption(arg: string, command: string, options: readonly string[]): Problem {
  const name = arg.replace(/^-+/, "");
  const others = Object.keys(taken).filter((other) => taken[other]!.options.includes(name));
  const hint = options.includes(name)
    ? `did you mean --${name}?`
    : others.length > 0
      ? `${command} takes no --${name}; ${others.join(" and ")} ${others.length > 1 ? "do" : "does"}`
      : didYouMean(
          `--${name}`,
          options.map((option) => `--${option}`),
          `${command} takes no ${arg}`,
        );
  return problem("unknown-key", name, arg, listed(options), hint);
}

function tooMany(message: string, command: string, most: string): Problem {
  const found = message.replace(/^Unknown arguments?: /, "");
  return problem("syntax", "", `${found} too`, `${most} after ${command}`, `patternloft ${command} --help`);
}

function twice(name: string): Problem {
  return problem("syntax", name, `--${name} given twice`, `--${name} once`, "leave one of them");
}

function empty(name: string): Problem {
  const shown = valued.includes(name) ? `--${name}` : name;
  return problem(
    "missing",
    name,
    "nothing, an empty text",
    `a value for ${shown}`,
    `give ${shown} a value, or leave it out`,
  );
}

function noValue(name: string): Problem {
  return problem(
    "missing",
    name,
    `nothing after --${name}`,
    `--${name} VALUE`,
    "give it a value, or leave it out",
  );
}

function nothingToWorkOn(what: string, most: string): Problem {
  return problem("missing", what, "too few names", most, "what to work on is missing: name orders or files");
}

function wrongFormat(given: string): Problem {
  return problem(
    "unknown-name",
    "format",
    given,
    "text, markdown, json, junit",
    "choose one of these formats",
  );
}
