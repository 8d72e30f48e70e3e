import { existsSync, statSync } from "node:fs";
import { join } from "node:path";
import { readText } from "../files/read-text.ts";
import { shownPath } from "../files/shown-path.ts";
import { type Checked, InputError } from "../order/problem.ts";
import { compareReports } from "../report/compare.ts";
import { comparisonMarkdown, comparisonText } from "../report/comparison-text.ts";
import { readReport } from "../report/read-report.ts";
import type { Report } from "../report/report.ts";
import type { Common } from "./console.ts";
import { exit, run } from "./run.ts";

/** What `patternloft compare` is given. */
export type CompareGiven = Common & {
  readonly before: string;
  readonly after: string;
  readonly format: "text" | "markdown" | "json";
};

/** Print what moved between two reports or packs: exit 1 when something moved beyond its tolerance. */
export function compare(given: CompareGiven): Promise<void> {
  return run(given, (console) => {
    const [before, after] = [given.before, given.after].map(load);
    const problems = [before!, after!].flatMap((report) => (report.ok ? [] : report.problems));
    if (!before!.ok || !after!.ok) throw new InputError(problems);
    const comparison = compareReports(before!.value, after!.value);
    const format = console.json ? "json" : given.format;
    if (format === "json") console.print(`${JSON.stringify(comparison, undefined, 2)}\n`);
    else console.print(format === "markdown" ? comparisonMarkdown(comparison) : comparisonText(comparison));
    return comparison.differs ? exit.differs : exit.done;
  });
}

function load(path: string): Checked<Report> {
  const folder = existsSync(path) && statSync(path).isDirectory();
  const file = folder ? join(path, "dimensions.json") : path;
  const shown = shownPath(file);
  if (!existsSync(file)) return nothingThere(shown, folder ? "no such file in this folder" : "no such file");
  const text = readText(file, shown);
  return text.ok ? readReport(text.value, shown) : text;
}

function nothingThere(file: string, found: string): Checked<Report> {
  const position = { file, line: 1, column: 1 };
  const hint = "look at the path, or make the pack first with: patternloft make ORDER";
  const allowed = "a pack or a dimension report";
  return { ok: false, problems: [{ code: "unreadable", position, name: "", found, allowed, hint }] };
}
