import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, expect, it } from "vitest";
import { flatsOf } from "../../src/drawing/flat/flats.ts";
import { fewerSheets } from "../../src/drawing/tiles/fewer-sheets.ts";
import { fullSize } from "../../src/drawing/tiles/full-size.ts";
import { pdfBytes } from "../../src/files/pdf/write-pdf.ts";
import { dimensionOf } from "../../src/order/spec.ts";
import { pageFaults } from "../drawing/page-clear.ts";
import { handedSamples, sampleSetUps } from "../drawing/set-up/sample-set-ups.ts";
import { top } from "../samples.ts";
import { type Job, pdfTools, readSheets } from "./read-sheets.ts";
import { describeWith, python } from "./tool.ts";

const samples = handedSamples.filter(({ turned }) => !turned);
const night = process.env.NIGHTLY !== undefined;

const folder = mkdtempSync(join(tmpdir(), "full-size-samples-"));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

/** Every drawing's name, with the samples that have it. */
const having = new Map<string, number[]>();
for (const [i, sample] of samples.entries())
  for (const { name } of flatsOf(sampleSetUps(sample).model.spec))
    having.set(name, [...(having.get(name) ?? []), i]);
const names = [...having.keys()];

/** By day each sample's neck, and every other drawing on one of the samples that have it, in turn; by night all of them. */
const tried = (sample: number, name: string) => {
  const own = having.get(name)!;
  return night || name === "neck-plan" || own[names.indexOf(name) % own.length] === sample;
};

/** A sample's drawings at full size on its own paper, as its pack has them. */
function jobsOf(sample: number): (Job & { readonly faults: readonly string[] })[] {
  const { name: order, model, store } = sampleSetUps(samples[sample]!);
  const { spec } = model;
  return flatsOf(spec)
    .filter(({ name }) => tried(sample, name))
    .map((file) => {
      const title = {
        ...{ order, part: file.part, name: file.name, fingerprint: "0123456789ab", hand: spec.hand },
        ...{ seenFrom: "front", overruled: [] },
      };
      const plain = {
        ...{ flat: file.of(model, store).value, title, paper: spec.paper },
        remarks: file.remarks?.(model, store),
      };
      const own = { ...plain, fromNumbers: file.fromNumbers?.(spec) };
      const given = { ...own, fewer: fewerSheets(own, spec.shop.paper) };
      const { pages, plan } = fullSize(given);
      const between = file.name === "neck-plan" ? { between: ["NUT", "BRIDGE"] as const } : {};
      const faults = pages
        .filter(({ groups }) => groups[0]!.name !== "remarks")
        .flatMap((page) => pageFaults(page, plan!.inside));
      return { name: file.name, given, pages, faults, ...between };
    });
}

describeWith(pdfTools, "full-size sheets of the samples, read by another program", () => {
  it.each(samples.map(({ name }, i) => ({ name, i })))(
    "of $name hold their drawings whole, inside the margins, joined at the match marks, words clear of all",
    async ({ i }) => {
      const jobs = jobsOf(i);
      expect(jobs.length).toBeGreaterThan(night ? 30 : 3);
      const read = await readSheets(folder, jobs);
      const { spec } = sampleSetUps(samples[i]!).model;
      for (const { name, faults: seen } of jobs) {
        const { faults, square, inside, smallest, covered, between } = read.get(name)!;
        expect({ name, faults, seen }).toEqual({ name, faults: [], seen: [] });
        expect(square, name).toBeLessThan(0.02);
        expect(inside, name).toBeGreaterThanOrEqual(0);
        expect(smallest, name).toBeGreaterThanOrEqual(2.499);
        expect(covered, name).toBeLessThan(0.02);
        if (name !== "neck-plan") continue;
        expect(Math.abs(between! - dimensionOf(spec, "string.length"))).toBeLessThan(0.1);
      }
    },
    night ? 1_200_000 : 120_000,
  );

  it("try every sample's neck, and every drawing on some sample", () => {
    expect(names.length).toBeGreaterThan(40);
    for (const name of names) {
      const on = samples.filter((_, i) => tried(i, name) && having.get(name)!.includes(i));
      expect(on.length, name).toBeGreaterThanOrEqual(name === "neck-plan" ? samples.length : 1);
    }
  });

  it.each(samples.filter((_, i) => night || i % 4 === 3).map(({ name }) => ({ name })))(
    "of $name give a 100 mm square within 0.1 when they are rendered at 600 dpi, and the same bytes twice",
    async ({ name }) => {
      const sample = samples.findIndex((one) => one.name === name);
      const { model, store } = sampleSetUps(samples[sample]!);
      const { spec } = model;
      const file = flatsOf(spec).find((flat) => flat.name === "bridge")!;
      const title = { order: name, part: "bridge", name: "bridge", fingerprint: "0123456789ab" };
      const given = {
        ...{ flat: file.of(model, store).value, paper: spec.paper, fromNumbers: undefined },
        title: { ...title, hand: spec.hand, seenFrom: "front", overruled: [] },
      };
      const { pages } = fullSize(given);
      const { corner } = (await readSheets(folder, [{ name, given, pages }])).get(name)!;
      const pdf = join(folder, `${name}.pdf`);
      const bytes = await pdfBytes(pages, "again");
      expect(await pdfBytes(fullSize(given).pages, "again")).toEqual(bytes);
      writeFileSync(pdf, bytes);
      const script = join(top, "test", "readers", "measure_square.py");
      const found = python(script, pdf, String(spec.paper.margin), JSON.stringify(corner)) as {
        width: number;
        height: number;
        margin: number;
      };
      expect(Math.abs(found.width - 100)).toBeLessThan(0.1);
      expect(Math.abs(found.height - 100)).toBeLessThan(0.1);
      expect(found.margin).toBe(0);
    },
    120_000,
  );
});
