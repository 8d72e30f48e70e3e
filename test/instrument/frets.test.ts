import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { findings } from "../../src/checks/checks.ts";
import { contradictions } from "../../src/instrument/contradictions.ts";
import { fretGaps } from "../../src/instrument/fingerboard/fret-gaps.ts";
import { instrument } from "../../src/instrument/instrument.ts";
import { dimensionOf, type Spec } from "../../src/order/spec.ts";
import { dimensionsOf } from "../../src/report/dimensions.ts";
import { memoryStore } from "../../src/step/store.ts";
import { modelOf } from "../../src/workshop/model.ts";
import { frettedSpec, specOf } from "../samples.ts";

const counts = [4, 5, 6, 7];

/** Every number of a spec's report by its name. */
function numbers(spec: Spec): Record<string, number> {
  const model = modelOf(spec, memoryStore());
  return Object.fromEntries(dimensionsOf(spec).map(({ id, of }) => [id, of(model)]));
}

/** A spec with values that its design would not allow. */
function forced(spec: Spec, values: Record<string, number>): Spec {
  const changed = Object.entries(values).map(([id, value]) => [id, { ...spec.values[id]!, value }]);
  return { ...spec, values: { ...spec.values, ...Object.fromEntries(changed) } };
}

const problemsOf = (spec: Spec) => contradictions(spec, instrument(spec, memoryStore()));
const status = (spec: Spec, id: string) =>
  findings(modelOf(spec, memoryStore())).find((finding) => finding.id === id)?.status;

describe("frets", () => {
  it.each(counts)("of %i strings stand within 1e-9 of the formula", (count) => {
    const all = numbers(frettedSpec(count));
    for (let n = 1; n <= 24; n++)
      expect(Math.abs(all[`fret.${n}`]! - 328 * (1 - 2 ** (-n / 12)))).toBeLessThan(1e-9);
    expect(all["fret.25"]).toBeUndefined();
  });

  it.each(counts)(
    "of %i strings clear every string, open and stopped, by the report's own numbers",
    (count) => {
      const spec = frettedSpec(count);
      const all = numbers(spec);
      for (const [i, { name, diameter }] of spec.strings.entries()) {
        const along = (x: number) => {
          const [nut, bridge] = [all[`string.${name}.offset.nut`]!, all[`string.${name}.offset.bridge`]!];
          return { y: nut + ((bridge - nut) * x) / 328, x };
        };
        // The board under an outer string runs straight but for the scoop; at its ends it is the circle through its edges.
        const at = (x: 0 | 270) => {
          const [r, edge] = [all["fingerboard.radius"]!, all["fingerboard.edge"]!];
          const half = all[x === 0 ? "fingerboard.width.nut" : "fingerboard.width.end"]! / 2;
          return edge + Math.sqrt(r ** 2 - along(x).y ** 2) - Math.sqrt(r ** 2 - half ** 2);
        };
        expect(all[`string.${name}.fret.first`]).toBeGreaterThanOrEqual(0.15);
        expect(all[`string.${name}.fret.least`]).toBeGreaterThan(0);
        if (i > 0 && i < spec.count - 1) continue;
        const side = i === 0 ? "high" : "low";
        const scoop = all[`fingerboard.scoop.${side}`]!;
        const crown = all["fret.crown.height"]!;
        const top = (x: number) => {
          const t = x / 270;
          return at(0) * (1 - t) + at(270) * t - 4 * t * (1 - t) * scoop + crown;
        };
        const [start, end] = [0, 270].map((x) => {
          const gap = all[`string.clearance.${x === 0 ? "nut" : "end"}.${side}`]!;
          return at(x as 0 | 270) + crown + gap;
        }) as [number, number];
        const bottom = (x: number) => start + ((end - start) * x) / 270;
        const fret = (n: number) => all[`fret.${n}`]!;
        expect(all[`string.${name}.fret.first`]).toBeCloseTo(bottom(fret(1)) - top(fret(1)), 5);
        let least = Number.POSITIVE_INFINITY;
        for (let n = 1; n < 24; n++)
          for (let m = n + 1; m <= 24; m++) {
            const rise = (bottom(328) - top(fret(n))) / (328 - fret(n));
            least = Math.min(least, top(fret(n)) + rise * (fret(m) - fret(n)) - top(fret(m)));
          }
        expect(all[`string.${name}.fret.least`]).toBeCloseTo(least, 5);
        expect(diameter).toBeGreaterThan(0);
      }
    },
  );

  it("keep order and stay in the board at random valid settings", () => {
    const value = fc.integer({ min: 325, max: 330 });
    const random = fc.tuple(fc.constantFrom(...counts), value, fc.integer({ min: 1, max: 24 }));
    fc.assert(
      fc.property(random, ([count, length, frets]) => {
        const spec = frettedSpec(count, `set:\n  string.length: ${length} mm\n`, frets);
        if (problemsOf(spec).length > 0) return;
        const all = numbers(spec);
        const places = Array.from({ length: frets }, (_, i) => all[`fret.${i + 1}`]!);
        const apart = places.map((x, i) => x - (places[i - 1] ?? 0));
        for (const [i, gap] of apart.entries()) {
          expect(gap).toBeGreaterThan(0);
          if (i > 0) expect(gap).toBeLessThan(apart[i - 1]!);
        }
        expect(places.at(-1)).toBeLessThan(all["fingerboard.length"]! - 2);
      }),
      { seed: 436, numRuns: 25 },
    );
  });

  it("keep every number for the left hand", () => {
    expect(numbers(frettedSpec(5, "", 24, { hand: "left" }))).toEqual(numbers(frettedSpec(5)));
  });

  it("are nowhere in a fretless order", () => {
    expect(Object.keys(numbers(specOf("thrift", 5))).filter((id) => id.includes("fret"))).toEqual([]);
  });
});

describe("planted faults in frets", () => {
  const five = frettedSpec(5);
  it("find strings too low over the first fret", () => {
    expect(status(five, "fret.open")).toBe("pass");
    expect(status(forced(five, { "string.clearance.nut.high": -0.05 }), "fret.open")).toBe("refuse");
  });

  it("find strings that lie on a higher fret when stopped", () => {
    expect(status(five, "fret.stopped")).toBe("pass");
    const low = { "string.clearance.end.high": -0.3, "fingerboard.scoop.high": 0 };
    expect(status(forced(five, low), "fret.stopped")).toBe("refuse");
  });

  it("find crowns 0.5 higher under unchanged strings", () => {
    const made = instrument(five, memoryStore());
    const strings = five.strings.map(({ diameter }, i) => ({
      nut: { y: made.layout.nut[i]!, z: made.heights.nut[i]! },
      bridge: { y: made.layout.bridge[i]!, z: made.heights.bridge[i]! },
      diameter,
    }));
    const places = made.fretSlots!.slots.map(({ x }) => x);
    const crown = dimensionOf(five, "fret.crown.height") + 0.5;
    const higher = fretGaps.work({ places, crown, board: made.surface, stringLength: 328, strings });
    const model = modelOf(five, memoryStore());
    const planted = { ...model, instrument: { ...made, fretGaps: higher } };
    expect(findings(planted).find(({ id }) => id === "fret.open")).toMatchObject({ status: "refuse" });
  });

  it("tell a fret beyond the board at the order's frets", () => {
    const [problem] = problemsOf(forced(five, { "fingerboard.length": 240 }));
    expect(problem).toMatchObject({ name: "frets", position: five.frets!.position });
  });

  it.each<[Record<string, number>, string]>([
    [{ "fingerboard.edge": 3 }, "fingerboard.edge"],
    [{ "string.clearance.nut.high": -0.5 }, "string.clearance.nut.high"],
  ])("tell what can't be built: %o", (values, name) => {
    expect(problemsOf(forced(five, values)).map((problem) => problem.name)).toContain(name);
  });
});
