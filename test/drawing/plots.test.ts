import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { axisOver, axisThrough, placeOn } from "../../src/drawing/plot/axis.ts";
import { bridgeLoadPlot } from "../../src/drawing/plot/bridge-load-plot.ts";
import { numberText } from "../../src/drawing/plot/number-text.ts";
import { plotFiles } from "../../src/drawing/plot/plots.ts";
import { tensionPlot } from "../../src/drawing/plot/tension-plot.ts";
import { ticksOver, ticksWithin } from "../../src/drawing/plot/ticks.ts";
import type { Sheet } from "../../src/drawing/sheet/sheet.ts";
import { memoryStore } from "../../src/step/store.ts";
import { modelOf } from "../../src/workshop/model.ts";
import { designs, everyCount, frettedSpec, specOf } from "../samples.ts";
import { crowded } from "./plot-parts.ts";

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
