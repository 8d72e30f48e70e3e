import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, expect, it } from "vitest";
import { assemblySheets } from "../../src/drawing/sheet/assembly/assembly-sheets.ts";
import type { Sheet, SheetText } from "../../src/drawing/sheet/sheet.ts";
import { titledSheet } from "../../src/drawing/sheet/titled-sheet.ts";
import { sheetSvgText } from "../../src/files/svg/write-sheet-svg.ts";
import { loadKernel } from "../../src/geometry/kernel.ts";
import { assembledFiles, meshedOnce } from "../../src/pack/meshed-once.ts";
import { handedSamples, sampleSetUps } from "../drawing/set-up/sample-set-ups.ts";
import { describeWith, ezdxf, python } from "./tool.ts";

type Read = {
  readonly paper: readonly [number, number];
  readonly faults: readonly (readonly string[])[];
  readonly texts: readonly (readonly [string, ...number[]])[];
};

const script = join(import.meta.dirname, "read_sheet.py");

describeWith(
  ezdxf,
  "sheets of the assembled instrument of every sample, of every design in both hands, read by xml.etree and shapely",
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

    beforeAll(async () => {
      folder = mkdtempSync(join(tmpdir(), "assembly-sheets-"));
      const kernel = await loadKernel();
      for (const sample of handedSamples) {
        const { name: order, model, store } = sampleSetUps(sample);
        const meshOf = meshedOnce(kernel, store);
        const parts = assembledFiles(model).map((file) => ({ ...file, mesh: meshOf(file) }));
        for (const { name, of } of assemblySheets(model, parts)) {
          const title = { order, part: "assembly", fingerprint: "0123456789ab", seenFrom: "front" } as const;
          const sheet = titledSheet(of(model, store).value, {
            ...{ ...title, hand: model.spec.hand },
            overruled: ["wall-between: tried on scrap wood of the same board twice"],
          });
          sheets.set(`${order}-${name}`, sheet);
        }
      }
      read = readOf(sheets);
    }, 400_000);
    afterAll(() => rmSync(folder, { recursive: true, force: true }));

    it("have no text on another or on any line, nothing outside the frame, no small letters, on A3", () => {
      expect(sheets.size).toBe(handedSamples.length * 2);
      for (const [name, { faults, paper, texts }] of Object.entries(read)) {
        expect({ name, faults, paper }).toEqual({ name, faults: [], paper: [420, 297] });
        expect(texts.length, name).toBeGreaterThan(8);
      }
    });

    const planted: [string, (sheet: Sheet, of: SheetText) => SheetText, RegExp][] = [
      [
        "a text on another",
        ({ texts }, of) => {
          const { x, y, align } = texts.find(({ text }) => text === "NECK")!;
          return { ...of, x, y, align };
        },
        /^text on text$/,
      ],
      [
        "a text on a part's edge",
        ({ lines }, of) => {
          const { x, y } = lines.find(({ weight }) => weight === "edge")!.path.points[0]!;
          return { ...of, x, y };
        },
        /^text on edge$/,
      ],
      ["small letters", (_, of) => ({ ...of, height: 2.4 }), /^small$/],
      ["a text outside the frame", (_, of) => ({ ...of, x: 3 }), /^outside$/],
    ];

    it.each(planted)("finds %s when it is planted", (name, plant, fault) => {
      const sheet = sheets.get("SY-0417-assembly-apart")!;
      const of = sheet.texts.find(({ text }) => text === "WING, BASS")!;
      const moved = plant(sheet, of);
      const texts = sheet.texts.map((text) => (text === of ? moved : text));
      const file = name.replaceAll(/\W+/g, "-");
      const { faults } = readOf(new Map([[file, { ...sheet, texts }]]))[file]!;
      expect(faults.some(([kind]) => fault.test(kind!))).toBe(true);
    });
  },
);
