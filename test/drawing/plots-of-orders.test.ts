import { describe, expect, it } from "vitest";
import { bowAnglesPlot } from "../../src/drawing/plot/bow-angles-plot.ts";
import { plotFiles } from "../../src/drawing/plot/plots.ts";
import type { Sheet } from "../../src/drawing/sheet/sheet.ts";
import { kernelOnce } from "../../src/pack/kernel-once.ts";
import { packOf } from "../../src/pack/pack.ts";
import { reportFor } from "../../src/pack/report-for.ts";
import { solidsHere } from "../../src/pack/solids/solids-here.ts";
import { memoryStore } from "../../src/step/store.ts";
import { modelOf } from "../../src/workshop/model.ts";
import { specOf } from "../samples.ts";
import { plainBow } from "./plain-bow.ts";
import { crowded } from "./plot-parts.ts";

const clear = { pairs: 0, outside: 0 };

it("the tension's plot says where no range is known", () => {
  const spec = specOf("sedge", "[E5, A4, D4, { name: F3, pitch: F3, diameter: 0.9 mm, mass: 4 g/m }]");
  const store = memoryStore();
  const texts = plotFiles[0]!.of(modelOf(spec, store), store).value.texts.map(({ text }) => text);
  expect(texts.filter((text) => text === "NO RANGE")).toHaveLength(1);
  expect(texts.filter((text) => text.includes(" TO "))).toHaveLength(3 + 1);
});

describe("the bow's plot, from plain numbers", () => {
  it("keeps its labels apart and in the frame for 4 to 7 strings, steep and flat, leaning either way", () => {
    for (const count of [4, 5, 6, 7]) {
      for (const apart of [8, 10, 12, 14]) {
        for (const lean of [-5, -2.5, 0, 2.5, 5]) {
          for (const hand of ["right", "left"] as const) {
            const { pairs, outside } = crowded(bowAnglesPlot.work({ hand, ...plainBow(count, apart, lean) }));
            expect({ count, apart, lean, pairs, outside }).toEqual({
              count,
              apart,
              lean,
              pairs: 0,
              outside: 0,
            });
          }
        }
      }
    }
  });

  it("draws a string that lies under the line through its neighbours, and says that its range is under 0", () => {
    const given = plainBow(4, 12, 0);
    const strings = given.strings.map((string, i) =>
      i === 1 ? { ...string, range: { angle: -1.5, tilt: { treble: 10, bass: 11.5 } } } : string,
    );
    const plot = bowAnglesPlot.work({ hand: "right", ...given, strings });
    expect(plot.texts.map(({ text }) => text)).toContain("A4 -1.5°");
    expect(crowded(plot)).toMatchObject(clear);
  });

  it("is mirrored for a left hand, words and numbers kept", () => {
    const given = plainBow(5, 12, 3);
    const [right, left] = (["right", "left"] as const).map((hand) => bowAnglesPlot.work({ hand, ...given }));
    expect(left!.texts.map(({ text }) => text).sort()).toEqual(right!.texts.map(({ text }) => text).sort());
    const middle = (right!.frame.minX + right!.frame.maxX) / 2;
    const rings = ({ lines }: Sheet, side: 1 | -1) =>
      lines
        .filter(({ weight }) => weight === "curve")
        .map(({ path }) => {
          const [a, b] = [path.points[0]!, path.points[1]!];
          return { x: side * ((a.x + b.x) / 2 - middle), y: a.y };
        });
    for (const [i, { x, y }] of rings(left!, -1).entries()) {
      expect(x).toBeCloseTo(rings(right!, 1)[i]!.x, 9);
      expect(y).toBeCloseTo(rings(right!, 1)[i]!.y, 9);
    }
    expect(rings(right!, 1)[0]!.x).toBeGreaterThan(20);
  });
});

describe("plots in a pack", () => {
  const plotSteps = (ran: readonly string[]) => ran.filter((name) => name.startsWith("plot."));

  it("are worked out for the whole pack, and neither for check nor for a part that they don't tell of", async () => {
    const ran: string[] = [];
    const store = memoryStore((name) => ran.push(name));
    const spec = specOf("sedge", 4);
    reportFor(spec, store);
    expect(ran.length).toBeGreaterThan(20);
    expect(plotSteps(ran)).toEqual([]);
    const solids = solidsHere(kernelOnce());
    const neck = await packOf(spec, { store, solids, only: ["neck"] });
    expect(plotSteps(ran)).toEqual([]);
    expect(ran).not.toContain("strings.gaps");
    expect(neck.files.some(({ path }) => path.startsWith("plots/"))).toBe(false);
    const { files } = await packOf(spec, { store, solids });
    expect(plotSteps(ran).sort()).toEqual(plotFiles.map(({ name }) => `plot.${name}`).sort());
    const manifest = JSON.parse(String(files.find(({ path }) => path === "manifest.json")!.content));
    for (const { name, what } of plotFiles) {
      const entry = manifest.files.find(({ path }: { path: string }) => path === `plots/${name}.svg`);
      expect(entry).toMatchObject({
        what,
        fingerprint: expect.stringMatching(/^[0-9a-f]{12}$/),
        readBack: null,
      });
      const svg = String(files.find(({ path }) => path === entry.path)!.content);
      expect(svg).toContain(`FINGERPRINT ${entry.fingerprint}`);
    }
  });

  it("are drawn anew for what they show and not for what they don't", () => {
    const keys = (more: string) => {
      const store = memoryStore();
      const model = modelOf(specOf("sedge", 5, more), store);
      return new Map(plotFiles.map((file) => [file.name, file.of(model, store).key]));
    };
    const base = keys("");
    const changed = (more: string) => {
      const now = keys(`set:\n  ${more}\n`);
      return [...base].filter(([name, key]) => now.get(name) !== key).map(([name]) => name);
    };
    expect(changed("core.depth: 31")).toEqual([]);
    expect(changed("pitch.standard: 443 Hz")).toContain("tension");
    expect(changed("pitch.standard: 443 Hz")).not.toContain("string-heights");
    expect(changed("fingerboard.scoop.low: 0.8")).toContain("string-heights");
    expect(changed("fingerboard.scoop.low: 0.8")).not.toContain("tension");
  });
});
