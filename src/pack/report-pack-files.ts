import { createHash } from "node:crypto";
import { contentsPage } from "../files/html/contents-page.ts";
import type { Spec } from "../order/spec.ts";
import { jsonLines } from "../report/json-lines.ts";
import type { Report } from "../report/report.ts";
import { reportCsv } from "../report/report-csv.ts";
import { reportMarkdown } from "../report/report-markdown.ts";
import type { PackFile } from "./pack-file.ts";

/** A machine file that isn't written, and the check that refuses it. */
export type Held = { readonly file: string; readonly check: string; readonly why: string };

const plain = { fingerprint: null, readBack: null };

/** What tells of a pack: the report for programs, for people and for tables, the checks, the contents page, and last the manifest of every other file. */
export function reportPackFiles(
  report: Report,
  spec: Spec,
  held: readonly Held[],
  made: readonly PackFile[],
): PackFile[] {
  const { order, design, strings, hand, fingerprint, checks } = report;
  const pictures = made
    .flatMap(({ path, pictureOf: part, what }) => (part === undefined ? [] : [{ path, part, what }]))
    .sort((a, b) => (a.path < b.path ? -1 : 1));
  const heldFiles = [...new Set(held.map(({ file }) => file))];
  const files: PackFile[] = [
    { path: "dimensions.json", content: jsonLines(report), what: "dimension report, for programs", ...plain },
    {
      ...{ path: "dimensions.md", what: "dimension report, for people", ...plain },
      content: reportMarkdown(report, spec, heldFiles, pictures),
    },
    {
      path: "dimensions.csv",
      content: reportCsv(report, spec),
      what: "dimension report, for tables",
      ...plain,
    },
    {
      path: "checks.json",
      content: jsonLines({ order, fingerprint, checks }),
      what: "what the checks found",
      ...plain,
    },
  ];
  const listed = [...made, ...files].map(({ path, what, content }) => ({
    path,
    what,
    bytes: Buffer.byteLength(content),
  }));
  files.push({
    ...{ path: "index.html", what: "contents of this pack, to open in a browser", ...plain },
    content: contentsPage({
      report,
      spec,
      held,
      pictures,
      files: listed.sort((a, b) => (a.path < b.path ? -1 : 1)),
    }),
  });
  const manifest = {
    ...{ order, revision: spec.revision, design, strings, hand, fingerprint, held },
    files: [...made, ...files].sort((a, b) => (a.path < b.path ? -1 : 1)).map(listing),
  };
  return [
    ...files,
    { path: "manifest.json", content: jsonLines(manifest), what: "what is in this pack", ...plain },
  ];
}

function listing({ path, what, content, fingerprint, readBack }: PackFile) {
  return { path, what, bytes: Buffer.byteLength(content), sha256: sha256(content), fingerprint, readBack };
}

function sha256(content: string | Uint8Array): string {
  return createHash("sha256").update(content).digest("hex");
}
