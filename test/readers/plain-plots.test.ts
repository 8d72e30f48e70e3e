import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, expect, it } from "vitest";
import { bowAnglesPlot } from "../../src/drawing/plot/bow-angles-plot.ts";
import { bridgeLoadPlot } from "../../src/drawing/plot/bridge-load-plot.ts";
import { titledPlot } from "../../src/drawing/plot/titled-plot.ts";
import type { Sheet } from "../../src/drawing/sheet/sheet.ts";
import { sheetSvgText } from "../../src/files/svg/write-sheet-svg.ts";
import { plainBow } from "../drawing/plain-bow.ts";
import { type BarsRead, type BowRead, differences } from "./plot-read.ts";
import { describeWith, ezdxf, python } from "./tool.ts";

type Read = BowRead & Pick<BarsRead, "bars">;

const hands = ["right", "left"] as const;
const bows = [4, 5, 6, 7].flatMap((count) =>
  hands.map((hand) => ({ id: `${count}-${hand}`, given: { hand, ...plainBow(count, 11.3, 2.4) } })),
);
const loads = [
  [31.2, -3.3],
  [22.45, -0.04],
  [18.7, 0],
  [17.03, 1.26],
] as const;
const load = {
  strings: ["E5", "A4", "D4", "G3"].map((name, i) => ({ name, load: loads[i]![0], lean: loads[i]![1] })),
  all: { load: 89.38, lean: -2.08 },
};

describeWith(ezdxf, "plots of plain numbers, read by xml.etree", () => {
  let folder = "";
  let read: Record<string, Read> = {};
  const texts = new Map<string, string>();

  const svg = (plot: Sheet, count: number, hand: "right" | "left") =>
    sheetSvgText(
      titledPlot(plot, {
        heading: "H",
        order: "T-1",
        voice: "violin",
        count,
        hand,
        fingerprint: "0".repeat(12),
      }),
      "plain",
    );

  function readOf(drawings: ReadonlyMap<string, string>): Record<string, Read> {
    const files = [...drawings].map(([name, text]) => {
      writeFileSync(join(folder, `${name}.svg`), text);
      return [name, join(folder, `${name}.svg`)] as const;
    });
    const found = python(join(import.meta.dirname, "read_plots.py"), ...files.map(([, file]) => file));
    return Object.fromEntries(files.map(([name, file]) => [name, (found as Record<string, Read>)[file]!]));
  }

  beforeAll(() => {
    folder = mkdtempSync(join(tmpdir(), "plain-plots-"));
    for (const { id, given } of bows)
      texts.set(`${id}.bow-angles`, svg(bowAnglesPlot.work(given), given.strings.length, given.hand));
    texts.set("four.bridge-load", svg(bridgeLoadPlot.work(load), 4, "right"));
    read = readOf(texts);
  });
  afterAll(() => rmSync(folder, { recursive: true, force: true }));

  it("stand each string's load hatched and its lean open beside it, down where it is negative", () => {
    const { bars } = read["four.bridge-load"]!;
    const wanted = load.strings.flatMap(({ name, load, lean }) => [
      { name, to: load, says: [`${load.toFixed(1)} N`], hatched: true },
      { name, to: lean, says: [lean === -0.04 ? "0.0 N" : `${lean.toFixed(1)} N`], hatched: false },
    ]);
    expect(bars).toHaveLength(wanted.length);
    for (const [i, { to, ...rest }] of bars.entries()) {
      expect(Math.abs(to - wanted[i]!.to)).toBeLessThan(0.001);
      expect(rest).toMatchObject({
        name: wanted[i]!.name,
        says: wanted[i]!.says,
        hatched: wanted[i]!.hatched,
      });
    }
  });

  it("draw the bow's lines as steep as they say, through the strings that they name", () => {
    for (const { id, given } of bows) {
      const found = read[`${id}.bow-angles`]!;
      expect(found.unreadable).toBeUndefined();
      expect(differences(found), id).toEqual([]);
      const { strings } = given;
      expect(found.lines.filter(({ dashed }) => !dashed)).toHaveLength(strings.length - 1);
      expect(found.ranges.map(({ name }) => name)).toEqual(strings.slice(1, -1).map(({ name }) => name));
      const most = found.lines.filter(({ dashed }) => dashed).map(({ touches }) => touches);
      expect(most.sort()).toEqual([[strings[0]!.name], [strings.at(-1)!.name]].sort());
    }
  });

  it("keep the strings' centres to scale, the highest to the right but for a left hand", () => {
    for (const { id, given } of bows) {
      const { rings, scale, lines } = read[`${id}.bow-angles`]!;
      const side = given.hand === "right" ? 1 : -1;
      for (const [i, ring] of rings.entries()) {
        const [first, here] = [given.strings[0]!, given.strings[i]!];
        expect(ring.name).toBe(here.name);
        expect(ring.x - rings[0]!.x).toBeCloseTo(side * scale * (here.y - first.y), 4);
        expect(ring.y - rings[0]!.y).toBeCloseTo(scale * (here.z - first.z), 4);
      }
      const [high, low] = (["right", "left"] as const).map((falls) =>
        lines.filter((line) => line.dashed && line.falls === falls).map(({ touches }) => touches[0]),
      );
      const ends = [given.strings[0]!.name, given.strings.at(-1)!.name];
      expect([...high!, ...low!]).toEqual(side === 1 ? ends : ends.reverse());
    }
  });

  it("would show a line that is a degree too steep, a number that is another's, and a range that is too wide", () => {
    const given = { hand: "right" as const, ...plainBow(5, 11.3, 2.4) };
    type Range = NonNullable<(typeof given.strings)[number]["range"]>;
    const third = (more: (range: Range) => Partial<Range>) => ({
      ...given,
      strings: given.strings.map((string, i) =>
        i === 2 && string.range !== null
          ? { ...string, range: { ...string.range, ...more(string.range) } }
          : string,
      ),
    });
    const steep = third(({ tilt }) => ({ tilt: { ...tilt, bass: tilt.bass + 1 } }));
    const wide = third(({ angle }) => ({ angle: angle + 0.2 }));
    const text = texts.get("5-right.bow-angles")!;
    const other = text.replace(/>(E5, A4) [\d.]+°</, ">$1 12.3°<");
    expect(other).not.toBe(text);
    const found = readOf(
      new Map([
        ["steep.bow-angles", svg(bowAnglesPlot.work(steep), 5, "right")],
        ["wide.bow-angles", svg(bowAnglesPlot.work(wide), 5, "right")],
        ["other.bow-angles", other],
      ]),
    );
    expect(differences(found["steep.bow-angles"]!).join()).toMatch(/touches/);
    expect(differences(found["wide.bow-angles"]!)).toEqual([expect.stringContaining("D4 says")]);
    expect(differences(found["other.bow-angles"]!)).toEqual([expect.stringContaining("12.3° is drawn at")]);
  });
});
