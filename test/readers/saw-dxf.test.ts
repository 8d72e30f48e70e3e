import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, expect, it } from "vitest";
import { madeParts, type Numbers } from "./made-parts.ts";
import { describeWith, ezdxf, python } from "./tool.ts";

type Relief = {
  readonly end: number;
  readonly start: number;
  readonly crosses: number;
  readonly part: number;
};
type Read = {
  readonly errors: readonly string[];
  readonly fixes: readonly string[];
  readonly closed: readonly boolean[];
  readonly nearest: number;
  readonly usual: number;
  readonly outside: number;
  readonly lines: number;
  readonly reliefs: readonly Relief[];
  readonly blank: readonly [number, number];
  readonly texts: readonly string[];
  readonly heights: readonly number[];
};

const script = join(import.meta.dirname, "read_saw.py");
const views = ["plan", "side"] as const;

describeWith(ezdxf, "the saw lines of every sample, opened by ezdxf and measured by shapely", () => {
  let out = "";
  let read: Record<string, Read> = {};
  let values = new Map<string, Numbers>();
  const fileOf = (folder: string, view: string) => join(folder, "outlines", `neck-saw-${view}.dxf`);

  beforeAll(async () => {
    out = mkdtempSync(join(tmpdir(), "saw-"));
    values = await madeParts(out, ["neck"]);
    const files = [...values.keys()].flatMap((folder) => views.map((view) => fileOf(folder, view)));
    read = python(script, ...files) as Record<string, Read>;
  });
  afterAll(() => rmSync(out, { recursive: true, force: true }));

  it("have no error, and open lines within the blank that has the report's size", () => {
    for (const [folder, report] of values) {
      for (const view of views) {
        const { errors, fixes, closed, outside, blank } = read[fileOf(folder, view)]!;
        expect([errors, fixes], folder).toEqual([[], []]);
        expect(closed.length).toBeGreaterThan(1);
        expect(closed.every((one) => !one)).toBe(true);
        expect(outside).toBe(0);
        expect(blank[0]).toBeCloseTo(report["neck.blank.length"]!, 5);
        const across = view === "plan" ? "neck.blank.width" : "neck.blank.thickness";
        expect(blank[1]).toBeCloseTo(report[across]!, 5);
      }
    }
  });

  it("stand at the allowance and half the kerf of 0.9 from the part", () => {
    for (const [folder, report] of values) {
      const wanted = report["saw.allowance"]! + 0.45;
      for (const view of views) {
        const { nearest, usual, lines } = read[fileOf(folder, view)]!;
        expect(lines).toBeGreaterThan(1);
        // shapely's chords stand up to 0.0005 off an arc on either path.
        expect(Math.abs(usual - wanted), `${folder} ${view}`).toBeLessThan(0.002);
        expect(nearest, `${folder} ${view}`).toBeGreaterThan(wanted - 0.002);
      }
    }
  });

  it("have relief cuts from the blank's edge that end on the line and go no farther", () => {
    let count = 0;
    for (const [file, { reliefs, texts }] of Object.entries(read)) {
      count += reliefs.length;
      expect(texts.filter((text) => text === "RELIEF")).toHaveLength(reliefs.length);
      for (const { end, start, crosses, part } of reliefs) {
        expect(end, file).toBeLessThan(0.001);
        expect(start, file).toBeLessThan(1e-5);
        expect(crosses, file).toBeLessThan(0.01);
        expect(part, file).toBeGreaterThan(1.6);
      }
    }
    expect(count).toBeGreaterThan(10);
  });

  it("say the board, the blade, the order of the cuts and the saw's cautions with their sources", () => {
    for (const [file, { texts, heights }] of Object.entries(read)) {
      const all = texts.join("\n");
      expect(heights, file).toEqual([2.5]);
      for (const told of [
        ...[/FROM BOARD (MAPLE|WALNUT)-64/, /KERF 0\.9/, /^GRAIN$/m, /FIRST CUT THE PLAN: BACK FLAT/],
        ...[/THEN CUT THE SIDE: TAPE EVERY OFFCUT/, /UPPER GUIDE WITHIN ABOUT 13/, /FINGERS 100 OR MORE/],
        ...[/ISOLATE .* BLADE/, /29 CFR 1910\.213\(i\)/, /HSE WIS31/, /DUST/, /LOCAL CODES/],
      ])
        expect(all, file).toMatch(told);
    }
  });

  it("tell a spoilt file: a saw line moved 1 mm toward the part", () => {
    const [folder] = values.keys();
    const text = readFileSync(fileOf(folder!, "plan"), "utf8");
    const spoilt = join(out, "spoilt.dxf");
    // The core's straight side: its own y coordinate, wherever it stands.
    const y = values.get(folder!)!["core.width"]! / 2 + values.get(folder!)!["saw.allowance"]! + 0.45;
    const moved = text.replaceAll(`\n${y}\n`, `\n${y - 1}\n`);
    expect(moved).not.toBe(text);
    writeFileSync(spoilt, moved);
    const good = read[fileOf(folder!, "plan")]!.nearest;
    expect((python(script, spoilt) as Record<string, Read>)[spoilt]!.nearest).toBeLessThan(good - 0.5);
  });
});
