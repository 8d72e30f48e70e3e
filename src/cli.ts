import yargs, { type Argv } from "yargs";
import { hideBin } from "yargs/helpers";
import manifest from "../package.json" with { type: "json" };
import { misgiven } from "./commands/misgiven.ts";

const many = { type: "string", array: true, demandOption: true } as const;
const one = { type: "string", demandOption: true } as const;

function variants<T>(command: Argv<T>) {
  return command
    .option("strings", { type: "string", describe: "Try another string count", requiresArg: true })
    .option("hand", { type: "string", describe: "Try the other hand: right or left", requiresArg: true })
    .option("set", {
      type: "string",
      array: true,
      nargs: 1,
      describe: "Try NAME=VALUE for a dimension; may be repeated",
    });
}

const typed = hideBin(process.argv);
let wrong: string | undefined;

const cli = yargs(typed)
  .scriptName("patternloft")
  .locale("en")
  .version(manifest.version)
  .parserConfiguration({
    ...{ "parse-numbers": false, "parse-positional-numbers": false, "dot-notation": false },
    ...{ "boolean-negation": false, "populate--": true },
  })
  .usage("$0 COMMAND\n\nFrom one order for an electric bowed-string instrument to the whole workshop pack.")
  .option("json", {
    type: "boolean",
    default: false,
    describe: "Machine-readable results on standard output",
  })
  .option("quiet", { type: "boolean", default: false, describe: "No messages" })
  .command(
    "make <orders..>",
    "Make the packs of orders",
    (command) =>
      variants(command.positional("orders", { ...many, describe: "Order files" }))
        .option("only", {
          type: "string",
          array: true,
          nargs: 1,
          describe: "Only this part, or several as A,B; may be repeated",
        })
        .option("out", {
          type: "string",
          default: "out",
          requiresArg: true,
          describe: "Folder that the packs go into",
        })
        .example("$0 make models/orders/SY-0417.yaml", "the pack, in out/SY-0417")
        .example("$0 make models/orders/SY-0417.yaml --strings 6", "the same with six strings, beside it")
        .example("$0 make --only nut,bridge a.yaml", "two parts alone")
        .example('$0 make a.yaml --set "string.length=330 mm"', "try one changed dimension"),
    async ({ only = [], ...given }) => (await import("./commands/make.ts")).make({ ...given, only }),
  )
  .command(
    "check <orders..>",
    "Print the numbers and checks, write nothing",
    (command) =>
      variants(command.positional("orders", { ...many, describe: "Order files" }))
        .example("$0 check models/orders/SY-0417.yaml", "every dimension and what the checks say")
        .example("$0 check a.yaml --json > report.json", "the report as make writes it"),
    async (given) => (await import("./commands/check.ts")).check(given),
  )
  .command(
    "compare [before] [after]",
    "Show what moved between two dimension reports or packs, or since what was approved",
    (command) =>
      command
        .positional("before", { type: "string", describe: "A pack or a dimensions.json" })
        .positional("after", {
          type: "string",
          describe: "A pack or a dimensions.json; without it the first is held against what was approved",
        })
        .option("all", {
          type: "boolean",
          default: false,
          describe: "Both are folders of packs or reports: one table of what moved",
        })
        .option("format", {
          choices: ["text", "markdown", "json", "junit"] as const,
          default: "text" as const,
        })
        .example("$0 compare out/SY-0417", "since models/approved/SY-0417.json; exit 1 when beyond tolerance")
        .example("$0 compare out/SY-0417 out/SY-0417~1a2b3c --format markdown", "a table for a pull request")
        .example(
          "$0 compare --all models/approved out --format junit",
          "every order, for a CI service to show",
        ),
    async (given) => (await import("./commands/compare.ts")).compare(given),
  )
  .command(
    "approve <order>",
    "Keep an order's report for the next comparison",
    (command) =>
      command
        .positional("order", { ...one, describe: "An order file" })
        .example("$0 approve models/orders/SY-0417.yaml", "kept in models/approved"),
    async (given) => (await import("./commands/approve.ts")).approve(given),
  )
  .command(
    "new <file>",
    "Write a commented order to start from",
    (command) =>
      command
        .positional("file", { ...one, describe: "A file that isn't there yet" })
        .example("$0 new models/orders/SY-0500.yaml", "then: patternloft check models/orders/SY-0500.yaml"),
    async (given) => (await import("./commands/new.ts")).newFile(given),
  )
  .completion("completion", "Print a completion script for bash or zsh")
  .example("$0 new my-order.yaml && $0 make my-order.yaml", "begin here")
  .epilogue(
    "Exit: 0 done, 1 a check refuses or a comparison differs, 2 the input is wrong, 3 the program failed.",
  )
  .demandCommand(1, "name a command; patternloft --help lists them")
  .strict()
  .check(misgiven)
  .fail((message, error) => {
    wrong = message ?? undefined;
    throw error ?? new Error(message);
  })
  .wrap(Math.min(110, process.stderr.columns ?? 100));

try {
  await cli.parseAsync();
} catch (error) {
  const { wrongUsage } = await import("./commands/wrong-usage.ts");
  wrongUsage(wrong, error, typed);
}
