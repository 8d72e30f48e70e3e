import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { axisOver, axisThrough, placeOn } from "../../src/drawing/plot/axis.ts";
import { bowAnglesPlot } from "../../src/drawing/plot/bow-angles-plot.ts";
import { bridgeLoadPlot } from "../../src/drawing/plot/bridge-load-plot.ts";
import { numberText } from "../../src/drawing/plot/number-text.ts";
import { plotFiles } from "../../src/drawing/plot/plots.ts";
import { tensionPlot } from "../../src/drawing/plot/tension-plot.ts";
import { ticksOver, ticksWithin } from "../../src/drawing/plot/ticks.ts";
import { type PlotTitle, titledPlot } from "../../src/drawing/plot/titled-plot.ts";
import { boxOf, textBox } from "../../src/drawing/sheet/lettering.ts";
import type { Sheet } from "../../src/drawing/sheet/sheet.ts";
import { grown } from "../../src/geometry/extents/grown.ts";
import { overlap } from "../../src/geometry/extents/overlap.ts";
import { kernelOnce } from "../../src/pack/kernel-once.ts";
import { packOf } from "../../src/pack/pack.ts";
import { reportFor } from "../../src/pack/report-for.ts";
import { solidsHere } from "../../src/pack/solids/solids-here.ts";
import { memoryStore } from "../../src/step/store.ts";
import { modelOf } from "../../src/workshop/model.ts";
import { designs, everyCount, frettedSpec, specOf } from "../samples.ts";
import { plainBow } from "./plain-bow.ts";

const spans = fc.tuple(
  fc.double({ min: -500, max: 500, noNaN: true }),
  fc.double({ min: 0.01, max: 1000, noNaN: true }),
  fc.integer({ min: 2, max: 12 }),
);

/** Whether a step is 1, 2 or 5 times a power of ten. */
const sensible = (size: number) => /^[125](\.0+)?e/.test(size.toExponential(3));

describe("ticks", () => {
  it("reach round the values in no more steps than asked, each of 1, 2 or 5 times a power of ten", () => {
    fc.assert(
      fc.property(spans, ([least, span, count]) => {
        const { values, decimals } = ticksOver(least, least + span, count);
        const size = values[1]! - values[0]!;
        expect(values.length - 1).toBeLessThanOrEqual(count);
        expect(sensible(size)).toBe(true);
        expect(values[0]).toBeLessThanOrEqual(least + 1e-6);
        expect(values.at(-1)).toBeGreaterThanOrEqual(least + span - 1e-6);
        expect(values[1]).toBeGreaterThan(least - 1e-6);
        // What is written is the tick itself, and a round number.
        for (const [i, value] of values.entries()) {
          expect(Math.abs(Number(numberText(value, decimals)) - value)).toBeLessThan(1e-9);
          if (i > 0) expect(value - values[i - 1]!).toBeCloseTo(size, 5);
        }
      }),
      { seed: 7, numRuns: 400 },
    );
  });

  it("within values stay there, and none is missing", () => {
    fc.assert(
      fc.property(spans, ([least, span, count]) => {
        const { values } = ticksWithin(least, least + span, count);
        for (const value of values) expect(value >= least - 1e-6 && value <= least + span + 1e-6).toBe(true);
        if (values.length < 2) return;
        const size = values[1]! - values[0]!;
        expect(sensible(size)).toBe(true);
        expect(span / size).toBeLessThanOrEqual(count + 1e-6);
        expect(values[0]! - size).toBeLessThan(least + 1e-6);
        expect(values.at(-1)! + size).toBeGreaterThan(least + span - 1e-6);
      }),
      { seed: 8, numRuns: 400 },
    );
  });

  it("are there for one value, and for none at all they are refused", () => {
    expect(ticksOver(0, 0, 5).values).toEqual([0, 0.2, 0.4, 0.6, 0.8, 1]);
    expect(() => ticksOver(2, 1, 5)).toThrow(RangeError);
    expect(() => ticksOver(Number.NaN, 1, 5)).toThrow(RangeError);
    expect(() => ticksWithin(1, 1, 5)).toThrow(RangeError);
  });

  it("have a scale that is even from end to end", () => {
    const over = axisOver([0, 87], 10, 110, 10);
    expect([placeOn(over, 0), placeOn(over, 45), placeOn(over, 90)]).toEqual([10, 60, 110]);
    const through = axisThrough([-0.5, 7.5], 0, 80, 8);
    expect([placeOn(through, -0.5), placeOn(through, 3.5), placeOn(through, 7.5)]).toEqual([0, 40, 80]);
    expect(through.ticks.values).toEqual([0, 1, 2, 3, 4, 5, 6, 7]);
  });

  it("never write minus zero", () => {
    expect([numberText(-0.04, 1), numberText(-0.06, 1), numberText(0, 2)]).toEqual(["0.0", "-0.1", "0.00"]);
  });
});

const title: PlotTitle = {
  ...{ heading: "H", order: "a".repeat(64), count: 7, fingerprint: "0123456789ab" },
  ...{ voice: "violin", hand: "right" },
};

/** Pairs of texts nearer each other than half a millimetre, and texts or lines outside the frame, counted by their boxes. */
function crowded(plot: Sheet): { readonly pairs: number; readonly outside: number; readonly texts: number } {
  const whole = titledPlot(plot, title);
  const boxes = whole.texts.map(textBox);
  const pairs = boxes.flatMap((box, i) =>
    boxes.slice(i + 1).filter((other) => overlap(grown(box, 0.4), other)),
  );
  const { minX, minY, maxX, maxY } = whole.frame;
  const out = [...boxes, boxOf(whole)].filter((box) => {
    return (
      box.minX < minX - 1e-9 || box.maxX > maxX + 1e-9 || box.minY < minY - 1e-9 || box.maxY > maxY + 1e-9
    );
  });
  return { pairs: pairs.length, outside: out.length, texts: boxes.length };
}

/** A plot with its last text moved onto its first, and one with it moved out: both must be counted. */
function spoiled(plot: Sheet): readonly [Sheet, Sheet] {
  const [first, last] = [plot.texts[0]!, plot.texts.at(-1)!];
  const rest = plot.texts.slice(0, -1);
  const at = { ...last, x: first.x, y: first.y, align: first.align, turn: first.turn };
  return [
    { ...plot, texts: [...rest, at] },
    { ...plot, texts: [...rest, { ...last, x: -4 }] },
  ];
}

const clear = { pairs: 0, outside: 0 };

describe("labels of plots", () => {
  it("keep apart and in the frame at both ends of what a design allows", () => {
    const ids = [
      ...["fingerboard.scoop.high", "fingerboard.scoop.low", "fingerboard.length", "string.length"],
      ...["string.clearance.nut.high", "string.clearance.nut.low", "pitch.standard"],
      ...["string.clearance.end.high", "string.clearance.end.low", "bridge.spread", "fingerboard.radius"],
    ];
    let counted = 0;
    const specs = [
      ...everyCount.map(({ design, count }) => specOf(design, count)),
      ...designs.thrift.map((count) => frettedSpec(count)),
    ];
    for (const spec of specs) {
      const known = ids.filter((id) => spec.values[id] !== undefined);
      for (const end of ["least", "most"] as const) {
        const each = process.env.NIGHTLY || spec.count === 5 ? known.map((id) => [id]) : [];
        for (const some of [known, ...each]) {
          const values = { ...spec.values };
          for (const id of some) values[id] = { ...values[id]!, value: values[id]![end] };
          const store = memoryStore();
          const model = modelOf({ ...spec, values }, store);
          for (const file of plotFiles) {
            const { pairs, outside, texts } = crowded(file.of(model, store).value);
            expect({ pairs, outside }, `${spec.design} ${spec.count} ${file.name} ${some}`).toEqual(clear);
            counted += texts;
          }
        }
      }
    }
    expect(counted).toBeGreaterThan(5_000);
  });

  it("are counted where they are planted on each other or outside", () => {
    const spec = specOf("sedge", 5);
    const store = memoryStore();
    for (const file of plotFiles) {
      const [on, out] = spoiled(file.of(modelOf(spec, store), store).value);
      expect(crowded(on).pairs, file.name).toBeGreaterThan(0);
      expect(crowded(out).outside, file.name).toBeGreaterThan(0);
    }
  });

  it("keep apart for tensions and loads of any size, whatever is usual", () => {
    const names = ["E5", "C#5", "A4", "Bb3", "G3", "C3", "Bb1"];
    const force = fc.double({ min: -2000, max: 2000, noNaN: true });
    const strings = fc
      .integer({ min: 4, max: 7 })
      .chain((n) => fc.array(force, { minLength: n, maxLength: n }));
    fc.assert(
      fc.property(strings, force, (forces, other) => {
        const loads = forces.map((load, i) => ({ name: names[i]!, load, lean: other / (i + 1) }));
        const load = bridgeLoadPlot.work({ strings: loads, all: { load: 1e4, lean: -1e4 } });
        expect(crowded(load)).toMatchObject(clear);
        const usual = {
          least: Math.abs(other) / 2.5 + 0.123,
          most: Math.abs(other) / 2.5 + 20.456,
          mark: "G",
        };
        const tensions = forces.map((tension, i) => {
          return { name: names[i]!, tension: Math.abs(tension), usual: i % 3 === 1 ? null : usual };
        });
        expect(crowded(tensionPlot.work({ strings: tensions }))).toMatchObject(clear);
      }),
      { seed: 21, numRuns: 150 },
    );
  });
});

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
