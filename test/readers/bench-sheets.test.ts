import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, expect, it } from "vitest";
import type { Sheet, SheetText } from "../../src/drawing/sheet/sheet.ts";
import { titledSheet } from "../../src/drawing/sheet/titled-sheet.ts";
import { travellerOf } from "../../src/drawing/sheet/traveller/traveller-of.ts";
import { travellerSheet } from "../../src/drawing/sheet/traveller/traveller-sheet.ts";
import { sheetSvgText } from "../../src/files/svg/write-sheet-svg.ts";
import { titleFor } from "../../src/pack/title.ts";
import { handedSamples, sampleSetUps } from "../drawing/set-up/sample-set-ups.ts";
import { describeWith, ezdxf, python } from "./tool.ts";

type Read = {
  readonly paper: readonly [number, number];
  readonly faults: readonly (readonly string[])[];
  readonly texts: readonly (readonly [string, ...number[]])[];
};

const script = join(import.meta.dirname, "read_sheet.py");
const fingerprint = "0123456789ab";

/** Every set-up's pages as they are printed, and the traveller's, by name. */
function pagesOf(sample: (typeof handedSamples)[number]): Map<string, Sheet> {
  const { name: order, model, store, found, sheets, refused } = sampleSetUps(sample);
  const given = { fingerprint, found, held: [], sheets, refused, notLookedAt: ["assembly.overlap"] };
  const pages = new Map<string, Sheet>();
  const put = (name: string, all: readonly Sheet[]) => {
    for (const [i, page] of all.entries()) pages.set(`${order}-${name}-${i + 1}`, page);
  };
  for (const { name, part, seenFrom, shows, pages: drawn } of sheets) {
    const title = titleFor(model.spec, { part, fingerprint, seenFrom, shows }, found);
    put(
      name,
      drawn.map((page) => titledSheet(page, title)),
    );
  }
  put("traveller", store.answer(travellerSheet, travellerOf(model, given)).value);
  return pages;
}

describeWith(
  ezdxf,
  "sheets of set-ups and travellers of every sample, of every design in both hands, read by xml.etree and shapely",
  () => {
    let folder = "";
    const sheets = new Map<string, Sheet>();
    let read: Record<string, Read> = {};

    const readOf = (named: ReadonlyMap<string, Sheet>): Record<string, Read> => {
      const files = [...named].map(([name, sheet]) => {
        const file = join(folder, `${name}.svg`);
        writeFileSync(file, sheetSvgText(sheet, name));
        return [name, file] as const;
      });
      const found = python(script, ...files.map(([, file]) => file)) as Record<string, Read>;
      return Object.fromEntries(files.map(([name, file]) => [name, found[file]!]));
    };

    beforeAll(() => {
      folder = mkdtempSync(join(tmpdir(), "bench-"));
      for (const sample of handedSamples)
        for (const [name, sheet] of pagesOf(sample)) sheets.set(name, sheet);
      read = readOf(sheets);
    }, 400_000);
    afterAll(() => rmSync(folder, { recursive: true, force: true }));

    it("have no text on another or on any line, nothing outside the frame, no small letters, on A3", () => {
      expect(sheets.size).toBeGreaterThan(handedSamples.length * 12);
      for (const [name, { faults, paper, texts }] of Object.entries(read)) {
        expect({ name, faults, paper }).toEqual({ name, faults: [], paper: [420, 297] });
        expect(texts.length, name).toBeGreaterThan(8);
      }
    });

    it("bear the order's fingerprint on every page of the traveller, with its number", () => {
      const travellers = Object.entries(read).filter(([name]) => name.includes("traveller"));
      expect(travellers.length).toBeGreaterThanOrEqual(handedSamples.length * 3);
      for (const [name, { texts }] of travellers) {
        const page = name.match(/\d+$/)![0];
        const foot = texts.find(([text]) => text.includes(`PAGE ${page} OF`))?.[0];
        expect(foot, name).toContain(`FINGERPRINT OF THE ORDER ${fingerprint}`);
      }
    });

    const planted: [string, (of: (start: string) => SheetText) => SheetText, RegExp][] = [
      [
        "a text on another",
        (of) => ({ ...of("RIM SPEED"), text: "PLANTED", y: of("CUTTER").y }),
        /^text on text$/,
      ],
      [
        "a text on a table's rule",
        (of) => ({ ...of("RIM SPEED"), text: "PLANTED", y: of("RIM SPEED").y - 2.5 }),
        /^text on e/,
      ],
      ["small letters", (of) => ({ ...of("RIM SPEED"), text: "PLANTED", height: 2.4 }), /^small$/],
      ["a text outside the frame", (of) => ({ ...of("RIM SPEED"), text: "PLANTED", x: 3 }), /^outside$/],
    ];

    it.each(planted)("finds %s when it is planted", (name, plant, fault) => {
      const [, sheet] = [...sheets].find(([, { texts }]) => texts.some(({ text }) => text === "RIM SPEED"))!;
      const of = (start: string) => sheet.texts.find(({ text }) => text === start)!;
      const file = name.replaceAll(" ", "-");
      const { faults } = readOf(new Map([[file, { ...sheet, texts: [...sheet.texts, plant(of)] }]]))[file]!;
      expect(
        faults.some(([kind, text]) => fault.test(kind!) && (text === "PLANTED" || kind === "text on text")),
      ).toBe(true);
    });
  },
);
