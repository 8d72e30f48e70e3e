import { describe, expect, it } from "vitest";
import { heading, hung, lettersIn, paragraph, type Section } from "../../src/drawing/sheet/bench/block.ts";
import { flowed } from "../../src/drawing/sheet/bench/flowed.ts";
import { inCapitals } from "../../src/drawing/sheet/bench/in-capitals.ts";
import { signalPanel } from "../../src/drawing/sheet/bench/signal-panel.ts";
import { table } from "../../src/drawing/sheet/bench/table.ts";
import { boxOf, textBox } from "../../src/drawing/sheet/lettering.ts";
import type { Box, Marks } from "../../src/drawing/sheet/sheet.ts";
import { overlap } from "../../src/geometry/extents/overlap.ts";

const column = (x: number, high: number): Box => ({ minX: x, maxX: x + 100, minY: 200 - high, maxY: 200 });
const said = (pages: readonly Marks[]) => pages.map(({ texts }) => texts.map(({ text }) => text));

describe("blocks of a bench sheet", () => {
  it("break a text within their width and lose none of it", () => {
    const text = "NEVER CLIMB: FEED ONLY AS THE ARROWS SHOW, AGAINST THE ROTATION";
    const lines = hung(text, 5, 50, 60);
    expect(lines.map((line) => line.text).join(" ")).toBe(text);
    expect(lines.length).toBeGreaterThan(2);
    for (const line of lines) {
      const { minX, maxX, maxY } = textBox(line);
      expect(minX >= 5 && maxX <= 65 && maxY <= 50).toBe(true);
    }
    expect(lettersIn(0)).toBe(1);
  });

  it("part a long name after its hyphens", () => {
    const lines = hung("SET-UP-WING-TREBLE-SAW-JOINT, JOINT", 0, 0, 60).map(({ text }) => text);
    expect(lines).toEqual(["SET-UP-WING-TREBLE-SAW-", "JOINT, JOINT"]);
    expect(hung("ABCDEFGHIJ", 0, 0, 12).map(({ text }) => text)).toEqual(["ABCD", "EFGH", "IJ"]);
  });

  it("are as high as what is in them", () => {
    for (const row of [paragraph("A B C ".repeat(40)), heading("WHAT IT IS ABOUT AND MORE")]) {
      const { high, marks } = row(50);
      const { minY, maxY } = boxOf(marks);
      expect(maxY).toBeLessThanOrEqual(0);
      expect(-minY).toBeLessThanOrEqual(high);
      expect(-minY).toBeGreaterThan(high - 3);
    }
  });

  it("letter in capitals only what can be lettered", () => {
    expect(inCapitals("tilted 12° über 3 × 4 mm")).toBe("TILTED 12 DEG UEBER 3 X 4 MM");
    expect(inCapitals("a ⌀ b")).toBe("A   B");
  });
});

describe("a table", () => {
  const columns = [
    { name: "WHAT", share: 1 },
    { name: "VALUE", share: 3 },
  ];

  it("keeps every cell's words inside its rules, and a row as high as its fullest cell", () => {
    const { rows } = table("LIST", columns, [["A LONG NAME FOR A ROW", "SHORT"]]);
    const { high, marks } = rows[0]!(80);
    expect(marks.texts.map(({ text }) => text)).toEqual(["A LONG", "NAME", "FOR A", "ROW", "SHORT"]);
    for (const text of marks.texts) {
      const box = textBox(text);
      const cell = text.text === "SHORT" ? { from: 20, to: 80 } : { from: 0, to: 20 };
      expect(box.minX > cell.from && box.maxX < cell.to && box.minY > -high && box.maxY < 0).toBe(true);
    }
  });

  it("leaves room for a hand where that is asked", () => {
    const { rows } = table("LIST", columns, [["", ""]], { least: 7.5 });
    expect(rows[0]!(80).high).toBe(7.5);
  });
});

describe("a caution's panel", () => {
  it.each(["DANGER", "WARNING", "CAUTION", "NOTICE"] as const)(
    "%s has its word, its text and its source apart",
    (signal) => {
      const { marks, high } = signalPanel({
        signal,
        text: "KEEP OFF ".repeat(12).trim(),
        source: "S: A STANDARD",
      })(120);
      const boxes = marks.texts.map(textBox);
      expect(marks.texts[0]!.text).toBe(signal);
      expect(boxes.some((a, i) => boxes.some((b, k) => k > i && overlap(a, b)))).toBe(false);
      expect(marks.texts.map(({ text }) => text).join(" ")).toContain("(S: A STANDARD)");
      expect(-boxOf(marks).minY).toBeLessThanOrEqual(high);
      // The safety alert sign stands for harm to people; a NOTICE has none.
      expect(marks.lines.some(({ weight }) => weight === "outline")).toBe(signal !== "NOTICE");
    },
  );
});

describe("sections in columns", () => {
  const rows = (count: number) => Array.from({ length: count }, (_, i) => paragraph(`ROW ${i + 1}`));
  const section = (count: number, more: Partial<Section> = {}): Section => ({
    ...{ head: heading("HEAD"), rows: rows(count) },
    ...more,
  });

  it("go on in the next column and page under their head, in order, with nothing lost or twice", () => {
    const pages = flowed([section(30)], () => [column(0, 40), column(120, 40)]);
    expect(pages.length).toBeGreaterThan(2);
    const all = said(pages).flat();
    expect(all.filter((text) => text.startsWith("ROW"))).toEqual(
      Array.from({ length: 30 }, (_, i) => `ROW ${i + 1}`),
    );
    for (const texts of said(pages)) expect(texts[0]).toBe("HEAD");
    for (const { texts } of pages)
      for (const text of texts) {
        const { minY, maxY, minX, maxX } = textBox(text);
        const inside = [0, 120].some((x) => minX >= x && maxX <= x + 100);
        expect(inside && minY >= 160 && maxY <= 200).toBe(true);
      }
  });

  it("never leave a head alone at the foot of a column", () => {
    const one = paragraph("BEFORE");
    const used = one(100).high;
    const high = used + 3 + heading("HEAD")(100).high + 2;
    const pages = flowed([{ head: null, rows: [one] }, section(2)], () => [column(0, Math.max(high, 25))]);
    for (const texts of said(pages)) expect(texts.at(-1)).not.toBe("HEAD");
  });

  it("stand together where a column holds them, if they ask for it", () => {
    const given = [section(5), section(5, { whole: true })];
    const pages = flowed(given, () => [column(0, 60)]);
    expect(said(pages).map((texts) => texts.length)).toEqual([6, 6]);
    expect(
      said(flowed([section(5), section(5)], () => [column(0, 60)])).map((texts) => texts.length),
    ).not.toEqual([6, 6]);
  });

  it("pass over a column that is too low for any of them, and fail where every one is", () => {
    const pages = flowed([section(2)], () => [column(0, 6), column(120, 60)]);
    expect(pages.flatMap(({ texts }) => texts).every(({ x }) => x >= 120)).toBe(true);
    expect(() => flowed([section(2)], () => [column(0, 6)])).toThrow(RangeError);
  });
});
