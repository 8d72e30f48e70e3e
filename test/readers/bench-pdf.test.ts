import { execFileSync } from "node:child_process";
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, expect, it } from "vitest";
import type { Sheet } from "../../src/drawing/sheet/sheet.ts";
import { sheetPage } from "../../src/drawing/sheet/sheet-page.ts";
import { pdfBytes } from "../../src/files/pdf/write-pdf.ts";
import { handedSamples, sampleSetUps } from "../drawing/set-up/sample-set-ups.ts";
import { describeWith } from "./tool.ts";

const poppler = { name: "poppler-utils", command: "pdftotext", args: ["-v"] };
const { sheets, found } = sampleSetUps(handedSamples.find(({ name }) => name === "SY-0417")!);
const guided = sheets.filter(({ step }) => step.setUp.kind === "fixture");

describeWith(poppler, "the PDF of a set-up's sheet, read by poppler", () => {
  const folder = mkdtempSync(join(tmpdir(), "bench-pdf-"));
  afterAll(() => rmSync(folder, { recursive: true, force: true }));

  const written = async (name: string, pages: readonly Sheet[]): Promise<string> => {
    const file = join(folder, `${name}.pdf`);
    writeFileSync(file, await pdfBytes(pages.map(sheetPage), name));
    return file;
  };
  const wordsIn = (file: string) =>
    execFileSync("pdftotext", ["-raw", file, "-"], { encoding: "utf8" }).split(/\s+/);
  const count = (words: readonly string[]) => {
    const counted = new Map<string, number>();
    for (const word of words) if (word !== "") counted.set(word, (counted.get(word) ?? 0) + 1);
    return [...counted].sort(([a], [b]) => (a < b ? -1 : 1));
  };

  it.each(guided.map((sheet) => ({ name: sheet.name, sheet })))(
    "$name has every word of its pages, as often",
    async ({ name, sheet }) => {
      const file = await written(name, sheet.pages);
      const drawn = sheet.pages.flatMap(({ texts }) => texts.flatMap(({ text }) => text.split(/\s+/)));
      expect(count(wordsIn(file))).toEqual(count(drawn));
    },
  );

  it.each(guided.map((sheet) => ({ name: sheet.name, sheet })))(
    "$name says the speed and the rim's speed that the checks found",
    async ({ name, sheet }) => {
      const words = wordsIn(await written(name, sheet.pages)).join(" ");
      const of = (check: string) => found.find(({ id }) => id === `${check}.${sheet.step.setUp.file}`)!.found;
      expect(words).toContain(`SPINDLE SPEED ${of("speed.mark")} RPM`);
      expect(words).toContain(`RIM SPEED ${Math.round(100 * of("rim-speed")) / 100} M/S`);
    },
  );

  it("is found out where another speed is printed", async () => {
    const sheet = guided[0]!;
    const pages = sheet.pages.map((page) => ({
      ...page,
      texts: page.texts.map((one) => ({ ...one, text: one.text.replace(/\d+ RPM/, "24000 RPM") })),
    }));
    const words = wordsIn(await written("planted", pages)).join(" ");
    expect(words).toContain("SPINDLE SPEED 24000 RPM");
    expect(found.find(({ id }) => id === `speed.mark.${sheet.step.setUp.file}`)!.found).not.toBe(24000);
  });

  it("has its lettering inside it, and arcs as curves", async () => {
    const file = await written("fonts", guided[0]!.pages);
    const fonts = execFileSync("pdffonts", [file], { encoding: "utf8" }).trim().split("\n").slice(2);
    expect(fonts.length).toBeGreaterThan(0);
    for (const line of fonts) expect(line).toMatch(/Type 3\s+Custom\s+yes/);
    const bytes = Buffer.from(await pdfBytes(guided[0]!.pages.map(sheetPage), "fonts")).toString("latin1");
    expect((bytes.match(/ [-\d.]+ c\b/g) ?? []).length).toBeGreaterThan(10);
  });
});
