import { commandLine, InputError, type Problem } from "../order/problem.ts";
import { comparePair, compareSets } from "../pack/compare-packs.ts";
import { filesMarkdown, filesText } from "../report/comparison-files.ts";
import { comparisonMarkdown, comparisonText } from "../report/comparison-text.ts";
import { type Compared, junitXml } from "../report/junit.ts";
import { movedFiles } from "../report/moved-files.ts";
import { type ComparedSets, movedTable, setsDiffer } from "../report/moved-table.ts";
import type { Common } from "./console.ts";
import { exit, run } from "./run.ts";

/** How a comparison is told. */
export const compareFormats = ["text", "markdown", "json", "junit"] as const;

/** What `patternloft compare` is given; with `all` both names are folders of packs or reports. */
export type CompareGiven = Common & {
  readonly before?: string | undefined;
  readonly after?: string | undefined;
  readonly all: boolean;
  readonly format: (typeof compareFormats)[number];
};

/**
 * Print what moved between two reports or packs, or between two folders of them: exit 1 when something moved beyond its tolerance. With one
 * name the approved reports stand for what was before.
 */
export function compare(given: CompareGiven): Promise<void> {
  return run(given, (console) => {
    const { before, after, all } = given;
    if (before === undefined) throw new InputError([nothingNamed]);
    const format = console.json ? "json" : given.format;
    const compared = all ? compareSets(before, after) : comparePair(before, after);
    if (!compared.ok) throw new InputError(compared.problems);
    const { value } = compared;
    console.print("all" in value ? setsText(value, format) : pairText(value, format));
    const differs = "all" in value ? setsDiffer(value) : value.comparison.differs;
    return differs ? exit.differs : exit.done;
  });
}

const nothingNamed: Problem = {
  ...{ code: "missing", position: { file: commandLine, line: 1, column: 1 }, name: "before" },
  ...{ found: "no names", allowed: "two reports or packs, or one to hold against what was approved" },
  hint: "what to work on is missing: name packs or reports",
};

function pairText(compared: Compared, format: CompareGiven["format"]): string {
  const { comparison, files } = compared;
  if (format === "junit") return junitXml([compared]);
  if (format === "json")
    return `${JSON.stringify(files === null ? comparison : { ...comparison, files }, undefined, 2)}\n`;
  return format === "markdown"
    ? comparisonMarkdown(comparison) + filesMarkdown(files ?? [])
    : comparisonText(comparison, filesText(files ?? []));
}

function setsText(sets: ComparedSets, format: CompareGiven["format"]): string {
  if (format === "junit") return junitXml(sets.all, sets.gone);
  if (format === "markdown") return movedTable(sets, format) + movedFiles(sets.all, format);
  if (format === "text") return movedFiles(sets.all, format) + movedTable(sets, format);
  const orders = sets.all.map(({ name, comparison, files }) => ({ order: name, ...comparison, files }));
  return `${JSON.stringify({ orders, new: sets.fresh, gone: sets.gone, differs: setsDiffer(sets) }, undefined, 2)}\n`;
}
