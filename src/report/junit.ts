import type { Comparison, MovedCheck, MovedDimension } from "./compare.ts";
import type { MovedFiles } from "./compare-files.ts";
import { readable } from "./markdown.ts";
import type { Report } from "./report.ts";

/** What one order's comparison is told from: its name, both reports, what moved, and the files where packs were compared. */
export type Compared = {
  readonly name: string;
  readonly before: Report;
  readonly after: Report;
  readonly comparison: Comparison;
  readonly files: readonly MovedFiles[] | null;
};

type Case = {
  readonly name: string;
  readonly of: string;
  readonly failure: string | null;
  readonly said: string;
  /** Only one of the reports looked at it. */
  readonly skipped?: boolean;
};

/**
 * Comparisons as JUnit XML, which any CI shows: one suite for the dimensions of an order and one for its checks, a case for each that
 * either report has. What makes `compare` end with 1 fails; what moved without that is told in the case. Files never fail; an order
 * of `gone` does.
 */
export function junitXml(all: readonly Compared[], gone: readonly string[] = []): string {
  const lost = gone.map((name): Case => {
    return { name, of: "orders", failure: "gone: nothing to compare with what was before", said: "gone" };
  });
  const made = all.flatMap((compared) => {
    const { name, files } = compared;
    return [
      suite(`${name} dimensions`, dimensionCases(compared)),
      suite(`${name} checks`, checkCases(compared)),
      ...(files === null ? [] : [suite(`${name} files`, fileCases(files))]),
    ];
  });
  const suites = lost.length === 0 ? made : [suite("orders", lost), ...made];
  const sum = (key: "tests" | "failures") => suites.reduce((total, each) => total + each[key], 0);
  const head = `<testsuites name="patternloft compare" tests="${sum("tests")}" failures="${sum("failures")}" errors="0" time="0">`;
  return `<?xml version="1.0" encoding="UTF-8"?>\n${head}\n${suites.map(({ text }) => text).join("\n")}\n</testsuites>\n`;
}

function suite(name: string, cases: readonly Case[]): { text: string; tests: number; failures: number } {
  const failures = cases.filter(({ failure }) => failure !== null).length;
  const skipped = cases.filter((each) => each.skipped === true).length;
  const counts = `tests="${cases.length}" failures="${failures}" errors="0" skipped="${skipped}" time="0"`;
  const lines = [`  <testsuite name="${xml(name)}" ${counts}>`, ...cases.map(caseText), "  </testsuite>"];
  return { text: lines.join("\n"), tests: cases.length, failures };
}

function caseText({ name, of, failure, said, skipped }: Case): string {
  const head = `    <testcase name="${xml(name)}" classname="${xml(of)}" time="0"`;
  if (failure !== null)
    return `${head}><failure message="${xml(failure)}" type="moved">${xml(said)}</failure></testcase>`;
  if (skipped === true) return `${head}><skipped/><system-out>${xml(said)}</system-out></testcase>`;
  return said === "" ? `${head}/>` : `${head}><system-out>${xml(said)}</system-out></testcase>`;
}

function dimensionCases({ before, after, comparison }: Compared): Case[] {
  const moved = new Map(comparison.dimensions.map((each) => [each.id, each]));
  const every = new Map([...before.dimensions, ...after.dimensions].map((each) => [each.id, each]));
  return [...every.values()]
    .sort((a, b) => (a.id < b.id ? -1 : 1))
    .map(({ id, label, part }): Case => {
      const how = moved.get(id);
      const said = how === undefined ? "" : dimensionText(how);
      return { name: id, of: part, failure: how?.beyond === true ? `${said}: ${label}` : null, said };
    });
}

function dimensionText({ kind, before, after, unit, tolerance }: MovedDimension): string {
  const value = (each: number | null) => (each === null ? "none" : `${readable(each)} ${unit}`.trimEnd());
  const allowed = kind === "changed" ? `, tolerance ${readable(tolerance)} ${unit}`.trimEnd() : "";
  return `${kind}: ${value(before)} before, ${value(after)} after${allowed}`;
}

function checkCases({ before, after, comparison }: Compared): Case[] {
  const moved = new Map(comparison.checks.map((each) => [each.id, each]));
  const every = new Map([...before.checks, ...after.checks].map((each) => [each.id, each]));
  return [...every.values()]
    .sort((a, b) => (a.id < b.id ? -1 : 1))
    .map(({ id, subject, why }): Case => {
      const how = moved.get(id);
      const said =
        how === undefined ? "" : `${how.kind}: ${how.before ?? "none"} before, ${how.after ?? "none"} after`;
      return {
        name: id,
        of: subject,
        failure: counts(how) ? `${said}; ${why}` : null,
        said,
        skipped: how?.kind === "not-looked-at",
      };
    });
}

/** Whether a check's other answer makes the comparison differ. */
function counts(moved: MovedCheck | undefined): boolean {
  if (moved === undefined) return false;
  return moved.kind === "worse" || moved.kind === "gone" || (moved.kind === "new" && moved.after !== "pass");
}

function fileCases(files: readonly MovedFiles[]): Case[] {
  return files.map(({ name, endings, kind, picture }): Case => {
    const look = picture === null ? "" : `; picture ${picture}`;
    return {
      name: `${name} (${kind})`,
      of: "files",
      failure: null,
      said: `${kind}: ${endings.join(", ")}${look}`,
    };
  });
}

/** A text as XML has it; what XML can't hold at all is left out. */
function xml(text: string): string {
  return text
    .replace(/[\u0000-\u0008\u000b\u000c\u000e-\u001f\ufffe\uffff]/g, "")
    .replaceAll("&", "&amp;")
    .replaceAll("<", "&lt;")
    .replaceAll(">", "&gt;")
    .replaceAll('"', "&quot;");
}
