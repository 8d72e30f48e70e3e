import { solidChecks, solidFindings } from "../checks/assembly/solid-checks.ts";
import type { Finding } from "../checks/check.ts";
import { findings, refuses } from "../checks/checks.ts";
import type { FlatFile } from "../drawing/flat/flat-file.ts";
import { flatFiles, flatsOf } from "../drawing/flat/flats.ts";
import { coverPart } from "../drawing/flat/recess-flats.ts";
import { type Title, titled } from "../drawing/flat/titled.ts";
import { plotFiles } from "../drawing/plot/plots.ts";
import { assemblySheets } from "../drawing/sheet/assembly/assembly-sheets.ts";
import { setUpSheets } from "../drawing/sheet/set-up/set-up-sheets.ts";
import { sheetFiles } from "../drawing/sheet/sheets.ts";
import { travellerOf } from "../drawing/sheet/traveller/traveller-of.ts";
import { expectedOf } from "../files/dxf/expected.ts";
import { readBackDxf } from "../files/dxf/read-back.ts";
import { dxfText } from "../files/dxf/write-dxf.ts";
import { svgText } from "../files/svg/write-svg.ts";
import type { Spec } from "../order/spec.ts";
import { type Report, reportOf } from "../report/report.ts";
import { fingerprintOf } from "../step/key.ts";
import type { Store } from "../step/store.ts";
import { type Model, modelOf } from "../workshop/model.ts";
import type { SolidFile } from "../workshop/solids/solid-file.ts";
import { solidFiles } from "../workshop/solids/solids.ts";
import { setUpPackFiles, travellerPackFiles } from "./bench-pack-files.ts";
import { printsOf } from "./fingerprints.ts";
import { type DrawnFlat, fullSizePackFile } from "./full-size-pack-file.ts";
import { type KeptFiles, keptFiles } from "./kept-files.ts";
import { assembledFiles } from "./meshed-once.ts";
import { type PackFile, ReadBackError } from "./pack-file.ts";
import { plotPackFile } from "./plot-pack-file.ts";
import { r12PackFiles } from "./r12-pack-file.ts";
import { type Held, reportPackFiles } from "./report-pack-files.ts";
import { sheetPackFiles } from "./sheet-pack-files.ts";
import { type AskedSolids, askedSolids } from "./solids/asked-solids.ts";
import type { Solids } from "./solids/solid-tasks.ts";
import { titleFor } from "./title.ts";

export type { Held };

/** Everything that one order makes. */
export type Pack = {
  readonly report: Report;
  readonly files: readonly PackFile[];
  readonly held: readonly Held[];
};

/** The names that `--only` takes: the parts that have machine files. Every part with a solid has flat files too. */
export const partNames: readonly string[] = [...new Set([...flatFiles.map(({ part }) => part), coverPart])];

/** What a pack is made with: a store of steps, what meshes and measures its solids, files made before if any are kept, and the parts to keep to. */
export type Means = {
  readonly store: Store;
  readonly solids: Solids;
  readonly kept?: KeptFiles;
  readonly only?: readonly string[] | "all";
};

/**
 * The pack of a spec, or of some of its parts: machine files with their pictures, solids, report, checks and manifest.
 *
 * Files that a refusing check holds back are left out and named. Every machine file and solid is read back before it is counted
 * as made; one that differs throws a ReadBackError.
 */
export async function packOf(spec: Spec, { store, solids, kept, only = "all" }: Means): Promise<Pack> {
  const model = modelOf(spec, store);
  const whole = only === "all";
  const wanted = ({ part }: { part: string }) => whole || only.includes(part);
  const [flats, files] = [flatsOf(spec).filter(wanted), solidFiles(model).filter(wanted)];
  const pieces = whole ? assembledFiles(model) : [];
  const asked = askedSolids(model, { pieces, files }, { solids, store, kept });
  const own = findings(model);
  const drawn = flats.map((file) => ({ file, answer: file.of(model, store) }));
  const parts: Parts = { model, store, drawn, files, pieces, asked, wanted, whole, kept };
  let made = await filesOf(parts, own);
  // Titles and what is held back follow from refusals alone: all is drawn before the solids are measured, and again only where these refuse.
  const inSolids = whole ? solidFindings(model, await asked.measured) : [];
  const found = [...own, ...inSolids].sort((a, b) => (a.id < b.id ? -1 : 1));
  if (inSolids.some(({ status }) => status === "refuse")) made = await filesOf(parts, found);
  const keys = drawn.map(({ file: { name }, answer: { key } }) => ({ name, key }));
  const prints = printsOf(keys, files);
  const notLookedAt = whole ? [] : solidChecks.map(({ id }) => id);
  const report = reportOf(model, found, prints, { parts: only, notLookedAt });
  const { held, setUps } = made;
  const { fingerprint } = report;
  const words = () => travellerOf(model, { fingerprint, found, held, ...setUps, notLookedAt });
  const filed = [...made.files, ...(whole ? await travellerPackFiles(words(), store) : [])];
  return { report, held, files: [...filed, ...reportPackFiles(report, spec, held, filed)] };
}

/** What the files of a pack are made of. */
type Parts = {
  readonly model: Model;
  readonly store: Store;
  readonly drawn: readonly DrawnFlat[];
  readonly files: readonly SolidFile[];
  readonly pieces: readonly SolidFile[];
  readonly asked: AskedSolids;
  readonly wanted: (file: { readonly part: string }) => boolean;
  readonly whole: boolean;
  readonly kept: KeptFiles | undefined;
};

type Filed = Pick<Pack, "files" | "held"> & { readonly setUps: ReturnType<typeof setUpSheets> };

/** All files of a pack but its report and traveller, by what was found, and those that are held back by it. */
async function filesOf(parts: Parts, found: readonly Finding[]): Promise<Filed> {
  const { model, store, drawn, files, pieces, asked, wanted, whole, kept } = parts;
  const named = [...drawn.map(({ file }) => file), ...files, ...(whole ? [{ name: "assembly" }] : [])];
  const held = found.filter(refuses).flatMap((finding) => heldBy(finding, named));
  const free = ({ name }: { name: string }) => !held.some(({ file }) => file === name);
  const flats = drawn.filter(({ file }) => free(file));
  const made = await drawnFiles(parts, flats, found);
  made.push(...(await pictureFiles(parts, found, free)));
  const setUps = setUpSheets(model, found);
  for (const sheet of setUps.sheets.filter(wanted))
    made.push(...(await setUpPackFiles(sheet, model.spec, store, found, kept)));
  const standing = whole && [{ name: "assembly" }, ...pieces].every(free);
  const sheets = standing ? await assemblySheetFiles(parts, found) : [];
  for (const file of asked.files.filter(free)) made.push(...(await file.files));
  if (standing) made.push(...(await asked.assembly()), ...sheets);
  return { held, files: made, setUps };
}

/** Machine files with their pictures, and each at full size on paper. */
async function drawnFiles(
  { model, store, kept }: Parts,
  drawn: readonly DrawnFlat[],
  found: readonly Finding[],
): Promise<PackFile[]> {
  const titles = drawn.map((entry) => ({ entry, title: titleOf(entry, model, found) }));
  const { machines } = model.spec.shop;
  const made: PackFile[] = [];
  for (const { entry, title } of titles) {
    const { name, folder, part, what } = entry.file;
    const from = ["machine", entry.answer.key, title, name, folder, part, what, machines];
    made.push(...(await keptFiles(kept, from, () => machineFiles(entry, model, title))));
  }
  for (const { entry, title } of titles)
    made.push(...(await fullSizePackFile(entry, model, store, title, kept)));
  return made;
}

/** Sheets and plots of the parts that are asked for; a sheet that shows something held back is held back too. */
async function pictureFiles(
  { model, store, wanted, kept }: Parts,
  found: readonly Finding[],
  free: (file: { readonly name: string }) => boolean,
): Promise<PackFile[]> {
  const sheets = sheetFiles.filter(wanted).filter(({ shows }) => shows.every((name) => free({ name })));
  const made = plotFiles.filter(wanted).map((file) => plotPackFile(file, model, store));
  for (const file of sheets) made.push(...(await sheetPackFiles(file, model, store, found, kept)));
  return made;
}

/** The sheets of the assembled instrument. */
async function assemblySheetFiles(
  { model, store, pieces, asked, kept }: Parts,
  found: readonly Finding[],
): Promise<PackFile[]> {
  const meshes = await asked.meshes;
  const parts = pieces.map(({ name, key }, i) => ({ name, key, mesh: meshes[i]! }));
  const made: PackFile[] = [];
  for (const file of assemblySheets(model, parts))
    made.push(...(await sheetPackFiles(file, model, store, found, kept)));
  return made;
}

function heldBy({ id, why, holds }: Finding, wanted: readonly { readonly name: string }[]): Held[] {
  const names = new Set(wanted.map(({ name }) => name));
  return [...names].filter((name) => holds.includes(name)).map((file) => ({ file, check: id, why }));
}

function titleOf({ file, answer }: DrawnFlat, model: Model, found: readonly Finding[]): Title {
  const { name, part } = file;
  const own = {
    part,
    fingerprint: fingerprintOf(answer.key),
    seenFrom: seenFrom(file, model),
    shows: [name],
  };
  return titleFor(model.spec, own, found);
}

function machineFiles({ file, answer }: DrawnFlat, model: Model, title: Title): PackFile[] {
  const fingerprint = fingerprintOf(answer.key);
  const flat = titled(answer.value, title);
  const text = dxfText(flat);
  const path = `${file.folder}/${file.name}.dxf`;
  const readBack = readBackDxf(text, expectedOf(flat));
  if (readBack.status !== "same") throw new ReadBackError(path, readBack.differences);
  const picture = svgText(flat, `${model.spec.order} ${file.name}`);
  return [
    { path, content: text, what: file.what, fingerprint, readBack },
    ...r12PackFiles(file, flat, fingerprint, model.spec.shop),
    {
      path: `${file.folder}/${file.name}.svg`,
      content: picture,
      what: `picture: ${file.what}`,
      fingerprint,
      readBack: null,
      pictureOf: file.part,
    },
  ];
}

function seenFrom({ seenFrom, seenAsCut }: FlatFile, model: Model): string {
  if (seenAsCut !== undefined) return seenAsCut(model);
  return typeof seenFrom === "string" ? seenFrom : seenFrom[model.spec.hand];
}
