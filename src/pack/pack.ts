import { createHash } from "node:crypto";
import type { Finding } from "../checks/check.ts";
import { findings, refuses } from "../checks/checks.ts";
import type { FlatFile } from "../drawing/flat/flat-file.ts";
import { flatFiles } from "../drawing/flat/flats.ts";
import { titled } from "../drawing/flat/titled.ts";
import { expectedOf } from "../files/dxf/expected.ts";
import { type ReadBack, readBackDxf } from "../files/dxf/read-back.ts";
import { dxfText } from "../files/dxf/write-dxf.ts";
import { svgText } from "../files/svg/write-svg.ts";
import { lettered } from "../order/lettering.ts";
import type { Spec } from "../order/spec.ts";
import { jsonLines } from "../report/json-lines.ts";
import { type Report, reportOf } from "../report/report.ts";
import { reportMarkdown } from "../report/report-markdown.ts";
import { fingerprintOf } from "../step/key.ts";
import type { Store } from "../step/store.ts";
import { type Model, modelOf } from "../workshop/model.ts";

/** A file of a pack, by its path inside it, with what stands of it in the manifest. */
export type PackFile = {
  readonly path: string;
  readonly text: string;
  readonly what: string;
  readonly fingerprint: string | null;
  readonly readBack: ReadBack | null;
};

/** A machine file that isn't written, and the check that refuses it. */
export type Held = { readonly file: string; readonly check: string; readonly why: string };

/** Everything that one order makes. */
export type Pack = {
  readonly report: Report;
  readonly files: readonly PackFile[];
  readonly held: readonly Held[];
};

/** Thrown when a file that was written reads back as something else: the program is wrong, and nothing is published. */
export class ReadBackError extends Error {
  constructor(path: string, differences: readonly string[]) {
    super(`${path} reads back differently from the model: ${differences.slice(0, 5).join("; ")}`);
    this.name = "ReadBackError";
  }
}

/** The names that `--only` takes: the parts that have machine files. */
export const partNames: readonly string[] = [...new Set(flatFiles.map(({ part }) => part))];

/**
 * The pack of a spec, or of some of its parts: machine files with their pictures, report, checks and manifest.
 *
 * Files that a refusing check holds back are left out and named. Every machine file is read back before it is counted as made;
 * one that differs throws a ReadBackError.
 */
export function packOf(spec: Spec, store: Store, only: readonly string[] | "all" = "all"): Pack {
  const model = modelOf(spec, store);
  const wanted = flatFiles.filter(({ part }) => only === "all" || only.includes(part));
  const found = findings(model);
  const held = found.filter(refuses).flatMap((finding) => heldBy(finding, wanted));
  const drawn = wanted.map((file) => ({ file, answer: file.of(model, store) }));
  const parts = new Map(drawn.map(({ file, answer }) => [file.name, fingerprintOf(answer.key)]));
  const report = reportOf(model, found, parts, only === "all" ? "all" : { parts: only });
  const made = drawn
    .filter(({ file }) => !held.some((entry) => entry.file === file.name))
    .flatMap((entry) => machineFiles(entry, model, found));
  return { report, held, files: [...made, ...reportFiles(report, spec, held, made)] };
}

/** The report alone, with no file made: what `check` and `approve` ask for. */
export function reportFor(spec: Spec, store: Store): Report {
  const model = modelOf(spec, store);
  const parts = new Map(flatFiles.map((file) => [file.name, fingerprintOf(file.of(model, store).key)]));
  return reportOf(model, findings(model), parts);
}

function heldBy({ id, why, holds }: Finding, wanted: readonly FlatFile[]): Held[] {
  return wanted
    .filter(({ name }) => holds.includes(name))
    .map(({ name }) => ({ file: name, check: id, why }));
}

type Drawn = { readonly file: FlatFile; readonly answer: ReturnType<FlatFile["of"]> };

function machineFiles({ file, answer }: Drawn, { spec }: Model, found: readonly Finding[]): PackFile[] {
  const fingerprint = fingerprintOf(answer.key);
  const reasons = found.filter(
    ({ holds, overruled }) => overruled !== undefined && holds.includes(file.name),
  );
  const flat = titled(answer.value, {
    ...{ order: spec.order, part: file.part, fingerprint, hand: spec.hand, seenFrom: seenFrom(file, spec) },
    overruled: reasons.map(({ id, overruled }) => lettered(`${id}: ${overruled}`) ?? id),
  });
  const text = dxfText(flat);
  const path = `${file.folder}/${file.name}.dxf`;
  const readBack = readBackDxf(text, expectedOf(flat));
  if (readBack.status !== "same") throw new ReadBackError(path, readBack.differences);
  const picture = svgText(flat, `${spec.order} ${file.name}`);
  return [
    { path, text, what: file.what, fingerprint, readBack },
    {
      path: `${file.folder}/${file.name}.svg`,
      text: picture,
      what: `picture: ${file.what}`,
      fingerprint,
      readBack: null,
    },
  ];
}

function seenFrom({ seenFrom }: FlatFile, { hand }: Spec): string {
  return typeof seenFrom === "string" ? seenFrom : seenFrom[hand];
}

function reportFiles(
  report: Report,
  spec: Spec,
  held: readonly Held[],
  made: readonly PackFile[],
): PackFile[] {
  const { order, design, strings, hand, fingerprint, checks } = report;
  const plain = { fingerprint: null, readBack: null };
  const files: PackFile[] = [
    { path: "dimensions.json", text: jsonLines(report), what: "dimension report, for programs", ...plain },
    {
      ...{ path: "dimensions.md", what: "dimension report, for people", ...plain },
      text: reportMarkdown(report, spec, [...new Set(held.map(({ file }) => file))]),
    },
    {
      path: "checks.json",
      text: jsonLines({ order, fingerprint, checks }),
      what: "what the checks found",
      ...plain,
    },
  ];
  const listed = [...made, ...files]
    .sort((a, b) => (a.path < b.path ? -1 : 1))
    .map((file) => ({
      ...{ path: file.path, what: file.what, bytes: Buffer.byteLength(file.text), sha256: sha256(file.text) },
      ...{ fingerprint: file.fingerprint, readBack: file.readBack },
    }));
  const manifest = {
    order,
    revision: spec.revision,
    design,
    strings,
    hand,
    fingerprint,
    held,
    files: listed,
  };
  return [
    ...files,
    { path: "manifest.json", text: jsonLines(manifest), what: "what is in this pack", ...plain },
  ];
}

function sha256(text: string): string {
  return createHash("sha256").update(text).digest("hex");
}
