import { basename } from "node:path";
import type { Checked } from "../order/problem.ts";
import { compareReports } from "../report/compare.ts";
import { compareFiles } from "../report/compare-files.ts";
import type { Compared } from "../report/junit.ts";
import type { ComparedSets } from "../report/moved-table.ts";
import { approvedFolderFor, approvedPath, type Comparable, loadComparable, reportsIn } from "./comparable.ts";

/** Two reports or packs compared; with `after` left out, `before` is held against its approved report. */
export function comparePair(before: string, after: string | undefined): Checked<Compared> {
  if (after !== undefined) return pair(basename(after), loadComparable(before), loadComparable(after));
  const now = loadComparable(before);
  if (!now.ok) return now;
  const approved = approvedPath(before, now.value.report.order);
  return approved.ok ? pair(now.value.report.order, loadComparable(approved.value), now) : approved;
}

/** Two folders of packs or reports compared, paired by name; with `after` left out, `before` is held against the approved reports. */
export function compareSets(before: string, after: string | undefined): Checked<ComparedSets> {
  const approved = after === undefined ? approvedFolderFor(before) : ({ ok: true, value: before } as const);
  if (!approved.ok) return approved;
  const [old, now] = [reportsIn(approved.value), reportsIn(after ?? before)];
  if (!old.ok || !now.ok)
    return { ok: false, problems: [old, now].flatMap((each) => (each.ok ? [] : each.problems)) };
  const names = [...now.value.keys()].filter((name) => old.value.has(name));
  const all = names.map((name) =>
    pair(name, loadComparable(old.value.get(name)!), loadComparable(now.value.get(name)!)),
  );
  const problems = all.flatMap((each) => (each.ok ? [] : each.problems));
  if (problems.length > 0) return { ok: false, problems };
  return {
    ok: true,
    value: {
      all: all.flatMap((each) => (each.ok ? [each.value] : [])),
      fresh: [...now.value.keys()].filter((name) => !old.value.has(name)),
      gone: [...old.value.keys()].filter((name) => !now.value.has(name)),
    },
  };
}

function pair(name: string, before: Checked<Comparable>, after: Checked<Comparable>): Checked<Compared> {
  if (!before.ok || !after.ok)
    return { ok: false, problems: [before, after].flatMap((each) => (each.ok ? [] : each.problems)) };
  const [old, now] = [before.value, after.value];
  const files = old.files === null || now.files === null ? null : compareFiles(old.files, now.files);
  const comparison = compareReports(old.report, now.report);
  return { ok: true, value: { name, before: old.report, after: now.report, comparison, files } };
}
