import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, expect, it } from "vitest";
import type { Sheet, SheetText } from "../../src/drawing/sheet/sheet.ts";
import { sheetFiles } from "../../src/drawing/sheet/sheets.ts";
import { titledSheet } from "../../src/drawing/sheet/titled-sheet.ts";
import { sheetSvgText } from "../../src/files/svg/write-sheet-svg.ts";
import { reportFor } from "../../src/pack/report-for.ts";
import { memoryStore } from "../../src/step/store.ts";
import { modelOf } from "../../src/workshop/model.ts";
import { everyCount, specOf } from "../samples.ts";
import { describeWith, ezdxf, python } from "./tool.ts";

type Box = readonly [number, number, number, number];
type Read = {
  readonly paper: readonly [number, number];
  readonly faults: readonly (readonly string[])[];
  readonly texts: readonly (readonly [string, ...Box])[];
  readonly bounds: Readonly<Record<string, readonly Box[]>>;
};

const script = join(import.meta.dirname, "read_sheet.py");
const hands = ["right", "left"] as const;
const every = everyCount.flatMap((each) => hands.map((hand) => ({ ...each, hand })));
const nameOf = ({ design, count, hand }: (typeof every)[number]) => `${design}-${count}-${hand}`;

function sheetOf({ design, count, hand }: (typeof every)[number]): Sheet {
  const spec = specOf(design, count, "", { hand });
  const store = memoryStore();
  const { value } = sheetFiles[0]!.of(modelOf(spec, store), store);
  const overruled = [
    "wall-between: tried on scrap, and the maker of the strings agrees with a wall of this size",
  ];
  return titledSheet(value, {
    ...{ order: "SY-0417", part: "neck", fingerprint: "0123456789ab", hand, seenFrom: "front", overruled },
  });
}

describeWith(ezdxf, "the neck's sheet of every design, count and hand, read by xml.etree and shapely", () => {
  let folder = "";
  const sheets = new Map<string, Sheet>();
  let read: Record<string, Read> = {};

  const readOf = (named: Record<string, Sheet>): Record<string, Read> => {
    const files = Object.entries(named).map(([name, sheet]) => {
      const file = join(folder, `${name}.svg`);
      writeFileSync(file, sheetSvgText(sheet, name));
      return [name, file] as const;
    });
    const found = python(script, ...files.map(([, file]) => file)) as Record<string, Read>;
    return Object.fromEntries(files.map(([name, file]) => [name, found[file]!]));
  };

  beforeAll(() => {
    folder = mkdtempSync(join(tmpdir(), "sheet-"));
    for (const each of every) sheets.set(nameOf(each), sheetOf(each));
    read = readOf(Object.fromEntries(sheets));
  }, 240_000);
  afterAll(() => rmSync(folder, { recursive: true, force: true }));

  it("has no text on another or on any line, nothing outside the frame, no small letters, on A3", () => {
    expect(Object.keys(read).length).toBe(every.length);
    for (const [name, { faults, paper, texts }] of Object.entries(read)) {
      expect({ name, faults, paper }).toEqual({ name, faults: [], paper: [420, 297] });
      expect(texts.length, name).toBeGreaterThan(60);
    }
  });

  it("shows the numbers of the report", () => {
    const ids = ["nut.width", "neck.wood.nut", "neck.wood.heel", "head.length", "head.width", "neck.lowest"];
    const set = [
      "core.width",
      "core.depth",
      "core.end",
      "string.length",
      "fingerboard.length",
      "head.thickness",
    ];
    for (const each of every) {
      const report = reportFor(specOf(each.design, each.count, "", { hand: each.hand }), memoryStore());
      const words = read[nameOf(each)]!.texts.map(([text]) => text);
      for (const id of [...ids, ...set]) {
        const { value } = report.dimensions.find((dimension) => dimension.id === id)!;
        const number = Math.abs(value).toFixed(2);
        const near = words.some((word) => Math.abs(Number.parseFloat(word) - Math.abs(value)) < 0.0101);
        expect(near, `${nameOf(each)} ${id} ${number}`).toBe(true);
      }
    }
  });

  it("has plan and side in projection: the same extents along x at one scale", () => {
    for (const [name, { bounds }] of Object.entries(read)) {
      const byLength = [...bounds.outline!].sort((a, b) => b[2] - b[0] - (a[2] - a[0]));
      const [plan, side] = byLength as [Box, Box];
      expect(Math.abs(plan[2] - side[2]), name).toBeLessThan(0.001);
      // The head's back edge reaches a little past its face's end, by its thickness times the sine of its angle.
      expect(Math.abs(plan[0] - side[0]), name).toBeLessThan(0.02 * (plan[2] - plan[0]));
      expect(Math.min(plan[1], side[1]), name).toBe(side[1]);
    }
  });

  it("draws plan and tail as long and as wide as it says, at the scale that it says", () => {
    for (const [name, { bounds, texts }] of Object.entries(read)) {
      const words = texts.map(([text]) => text);
      const scale = Number(/PLAN FROM THE FRONT {2}1:([\d.]+)/.exec(words.join("\n"))![1]);
      const plan = [...bounds.outline!].sort((a, b) => b[2] - b[0] - (a[2] - a[0]))[0]!;
      const long = ((plan[2] - plan[0]) * scale).toFixed(2);
      expect(words, name).toContain(`${long} ±0.10`);
      const sections = [...bounds.cut!].map(([x1, y1, x2, y2]) => ({ wide: x2 - x1, deep: y2 - y1 }));
      const detail = Number(/A-A {2}1:([\d.]+)/.exec(words.join("\n"))![1]);
      for (const { wide, deep } of sections) {
        expect(words, name).toContain(`${(wide * detail).toFixed(2)} ±0.10`);
        expect(words, name).toContain(`${(deep * detail).toFixed(2)} ±0.10`);
      }
    }
  });

  it("turns the wood over for a left hand, and no word", () => {
    for (const { design, count } of everyCount) {
      const [right, left] = hands.map((hand) => read[`${design}-${count}-${hand}`]!);
      const numbers = (of: Read) =>
        of.texts
          .map(([text]) => text)
          .filter((text) => /^\d/.test(text))
          .sort();
      expect(numbers(left!)).toEqual(numbers(right!));
      const { strings } = specOf(design, count);
      const above = ({ texts }: Read) => {
        const [high, low] = [strings[0]!, strings.at(-1)!].map(({ name }) => {
          const found = texts.filter(([text]) => text === name || text.startsWith(`${name} Y `));
          expect(found, `${design} ${count} ${name}`).toHaveLength(1);
          return found[0]![2];
        });
        return high! > low!;
      };
      expect([above(right!), above(left!)], `${design} ${count}`).toEqual([true, false]);
      expect(left!.texts.some(([text]) => text.includes("SIDE FROM THE TREBLE SIDE"))).toBe(true);
      expect(right!.texts.some(([text]) => text.includes("SIDE FROM THE BASS SIDE"))).toBe(true);
    }
  });

  it("is written with the same bytes twice, with arcs as arcs", () => {
    const [first] = every;
    const text = sheetSvgText(sheetOf(first!), "again");
    expect(sheetSvgText(sheetOf(first!), "again")).toBe(text);
    expect(text.match(/d="[^"]*A/g)!.length).toBeGreaterThan(20);
  });

  const planted: [
    string,
    (sheet: Sheet, of: (start: string) => SheetText) => readonly SheetText[],
    RegExp,
  ][] = [
    [
      "a text on another",
      (_, of) => [{ ...of("570.15"), x: of("R3").x, y: of("R3").y, align: of("R3").align }],
      /^text on text$/,
    ],
    [
      "a text on the outline",
      (sheet, of) => {
        const { x, y } = sheet.lines.find(({ weight }) => weight === "outline")!.path.points[0]!;
        return [{ ...of("570.15"), x, y }];
      },
      /^text on outline$/,
    ],
    ["small letters", (_, of) => [{ ...of("570.15"), height: 2.4 }], /^small$/],
    ["a text outside the frame", (_, of) => [{ ...of("570.15"), x: 3 }], /^outside$/],
  ];

  it.each(planted)("finds %s when it is planted", (name, plant, fault) => {
    const sheet = sheets.get("sedge-5-right")!;
    const of = (start: string) => sheet.texts.find(({ text }) => text.startsWith(start))!;
    const moved = plant(sheet, of);
    const rest = sheet.texts.filter(({ text }) => !moved.some((other) => other.text === text));
    const file = name.replaceAll(" ", "-");
    const { faults } = readOf({ [file]: { ...sheet, texts: [...rest, ...moved] } })[file]!;
    expect(faults.some(([kind]) => fault.test(kind!))).toBe(true);
  });
});
