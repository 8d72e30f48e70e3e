import { createHash } from "node:crypto";
import { existsSync, readdirSync, statSync } from "node:fs";
import { resolve as absolute, basename, dirname, extname, join } from "node:path";
import { readText } from "../files/read-text.ts";
import { shownPath } from "../files/shown-path.ts";
import type { Checked } from "../order/problem.ts";
import { type ListedFile, readManifest } from "../report/read-manifest.ts";
import { readReport } from "../report/read-report.ts";
import type { Report } from "../report/report.ts";

/** One side of a comparison: a report, and the files beside it where it is a pack's. */
export type Comparable = { readonly report: Report; readonly files: readonly ListedFile[] | null };

/** What lies under a path: a pack's report with what its manifest lists, or a report by itself; or why neither can be had. */
export function loadComparable(path: string): Checked<Comparable> {
  const folder = isFolder(path);
  const file = folder ? join(path, "dimensions.json") : path;
  const shown = shownPath(file);
  if (!existsSync(file)) return nothingThere(shown, folder ? "no such file in this folder" : "no such file");
  const text = readText(file, shown);
  if (!text.ok) return text;
  const report = readReport(text.value, shown);
  const manifest = join(path, "manifest.json");
  if (!report.ok || !folder || !existsSync(manifest))
    return report.ok ? { ok: true, value: { report: report.value, files: null } } : report;
  const listed = readText(manifest, shownPath(manifest));
  if (!listed.ok) return listed;
  const files = readManifest(listed.value, shownPath(manifest));
  if (!files.ok) return files;
  const own = files.value.find((each) => each.path === "dimensions.json");
  const hash = createHash("sha256").update(text.value).digest("hex");
  if (own !== undefined && own.sha256 !== hash)
    return nothingThere(shown, "other bytes than the pack's manifest says, so it was changed or damaged");
  return { ok: true, value: { report: report.value, files: files.value } };
}

/** The approved report that a pack or a report is held against: in `models/approved` or `approved` beside it, above it or here, the nearest first. */
export function approvedPath(path: string, order: string): Checked<string> {
  const name = `${order}.json`;
  const found = approvedFolders(path)
    .map((folder) => join(folder, name))
    .find((file) => existsSync(file) && absolute(file) !== absolute(path));
  if (found !== undefined) return { ok: true, value: found };
  const position = { file: shownPath(path), line: 1, column: 1 };
  return {
    ok: false,
    problems: [
      {
        ...{ code: "unreadable", position, name: "before", found: `no approved report of ${order}` },
        allowed: "a report in models/approved/, or two names to compare",
        hint: `keep one with: patternloft approve models/orders/${order}.yaml`,
      },
    ],
  };
}

/** The folder of approved reports that stands for all orders, or why there is none. */
export function approvedFolderFor(path: string): Checked<string> {
  const found = approvedFolders(path).find(isFolder);
  return found === undefined ? nothingThere("models/approved", "no such folder") : { ok: true, value: found };
}

function approvedFolders(path: string): string[] {
  const above: string[] = [];
  for (let folder = absolute(path); !above.includes(folder); folder = dirname(folder)) above.push(folder);
  return [...above, process.cwd()].flatMap((root) => [
    join(root, "models", "approved"),
    join(root, "approved"),
  ]);
}

/** The reports and packs of a folder by name: each folder with a dimensions.json, and each JSON file; a folder without any is a problem. */
export function reportsIn(folder: string): Checked<ReadonlyMap<string, string>> {
  if (!isFolder(folder))
    return nothingThere(shownPath(folder), existsSync(folder) ? "a file" : "no such folder");
  const entries = readdirSync(folder).sort();
  const found = entries
    .map((entry) => join(folder, entry))
    .filter((path) =>
      isFolder(path) ? existsSync(join(path, "dimensions.json")) : extname(path) === ".json",
    );
  if (found.length === 0) return nothingThere(shownPath(folder), "a folder without a pack or a report");
  return {
    ok: true,
    value: new Map(found.map((path) => [basename(path, isFolder(path) ? "" : ".json"), path])),
  };
}

function isFolder(path: string): boolean {
  return statSync(path, { throwIfNoEntry: false })?.isDirectory() === true;
}

function nothingThere(file: string, found: string): Checked<never> {
  const position = { file, line: 1, column: 1 };
  const hint = "look at the path, or make the pack first with: patternloft make ORDER";
  const allowed = "a pack or a dimension report";
  return { ok: false, problems: [{ code: "unreadable", position, name: "", found, allowed, hint }] };
}
