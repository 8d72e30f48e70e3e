import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { flatFiles } from "../../src/drawing/flat/flats.ts";
import { extentsOf } from "../../src/geometry/measure.ts";
import { contradictions } from "../../src/instrument/contradictions.ts";
import { fretGaps } from "../../src/instrument/fingerboard/fret-gaps.ts";
import { instrument } from "../../src/instrument/instrument.ts";
import { dimensionOf, type Spec } from "../../src/order/spec.ts";
import { dimensionsOf } from "../../src/report/dimensions.ts";
import { memoryStore } from "../../src/step/store.ts";
import { modelOf } from "../../src/workshop/model.ts";
import { foundBy } from "../found-by.ts";
import { ownBoard } from "../own-board.ts";
import { frettedSpec, orderText, resolved, sampleText, specOf } from "../samples.ts";

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
const status = (spec: Spec, id: string) => foundBy(modelOf(spec, memoryStore()), id)?.status;

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
      const of = (id: string) => all[id]!;
      const own = ownBoard(spec, all);
      const [crown, length] = [of("fret.crown.height"), own.length];
      for (const [i, { name }] of spec.strings.entries()) {
        const share = i / (spec.count - 1);
        const clearance = (where: "nut" | "end") => {
          const [high, low] = [of(`string.clearance.${where}.high`), of(`string.clearance.${where}.low`)];
          return high + (low - high) * share;
        };
        // The frets' tops under this string, and its underside, straight through its clearances at the board's ends.
        const top = (x: number) => own.top(x, own.across(name, x)) + crown;
        const [start, end] = [top(0) + clearance("nut"), top(length) + clearance("end")];
        const under = (x: number) => start + ((end - start) * x) / length;
        const frets = Array.from({ length: 24 }, (_, n) => 328 * (1 - 2 ** (-(n + 1) / 12)));
        const first = under(frets[0]!) - top(frets[0]!);
        let least = Number.POSITIVE_INFINITY;
        for (const [n, x] of frets.entries())
          for (const higher of frets.slice(n + 1)) {
            const rise = (under(328) - top(x)) / (328 - x);
            least = Math.min(least, top(x) + rise * (higher - x) - top(higher));
          }
        expect(of(`string.${name}.fret.first`), name).toBeCloseTo(first, 5);
        expect(of(`string.${name}.fret.least`), name).toBeCloseTo(least, 5);
        expect(first, name).toBeGreaterThanOrEqual(0.15);
        expect(least, name).toBeGreaterThan(0);
      }
    },
  );

  it("keep order and stay in the board at random valid settings", () => {
    const value = fc.integer({ min: 325, max: 330 });
    const random = fc.tuple(fc.constantFrom(...counts), value, fc.integer({ min: 1, max: 24 }));
    let [built, skipped] = [0, 0];
    fc.assert(
      fc.property(random, ([count, length, frets]) => {
        const spec = frettedSpec(count, `set:\n  string.length: ${length} mm\n`, frets);
        if (problemsOf(spec).length > 0) {
          skipped++;
          return;
        }
        built++;
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
    expect(built + skipped).toBeGreaterThanOrEqual(25);
    expect(built).toBeGreaterThan(4 * skipped);
  });

  it.each(counts)(
    "of %i strings in slots from edge to edge leave the least wood at the board's edges",
    (count) => {
      const blind = frettedSpec(count);
      const through: Spec = { ...blind, frets: { ...blind.frets!, slots: "through" } };
      const all = numbers(through);
      const own = ownBoard(through, all);
      /** Down from the surface at an end of a slot, square to it, the floor: a circle about the same middle. */
      const floor = (x: number, y: number) => {
        const { y: my, z: mz } = own.middle(x);
        return mz + Math.sqrt((own.radius(x) - all["fret.slot.depth"]!) ** 2 - (y - my) ** 2);
      };
      const ends = (edge: number) =>
        Array.from({ length: 24 }, (_, n) => all[`fret.${n + 1}`]!).flatMap((x) =>
          [-1, 1].map((side) => floor(x, side * (own.half(x) - edge))),
        );
      expect(all["fret.slot.left"]).toBeCloseTo(Math.min(...ends(0)), 5);
      expect(numbers(blind)["fret.slot.left"]).toBeCloseTo(Math.min(...ends(all["fret.slot.edge"]!)), 5);
      expect(all["fret.slot.left"]!).toBeLessThan(numbers(blind)["fret.slot.left"]!);
      // Their drawing reaches the board's edges at their middles; blind ones stay inside by the wood left there.
      for (const [spec, short] of [
        [through, 0],
        [blind, all["fret.slot.edge"]!],
      ] as const) {
        const { shapes } = flatFiles
          .find(({ name }) => name === "fingerboard")!
          .of(modelOf(spec, memoryStore()), memoryStore()).value;
        const slots = shapes.filter(({ layer }) => layer.startsWith("RECESS-"));
        expect(slots).toHaveLength(24);
        for (const [n, { path }] of slots.entries()) {
          const { minY, maxY } = extentsOf([path])!;
          const half = own.half(all[`fret.${n + 1}`]!) - short;
          expect(maxY).toBeCloseTo(half, 5);
          expect(minY).toBeCloseTo(-half, 5);
        }
      }
      expect(problemsOf(through)).toEqual([]);
    },
  );

  it("keep every number for the left hand", () => {
    expect(numbers(frettedSpec(5, "", 24, { hand: "left" }))).toEqual(numbers(frettedSpec(5)));
  });

  it("are nowhere in a fretless order", () => {
    expect(Object.keys(numbers(specOf("thrift", 5))).filter((id) => id.includes("fret"))).toEqual([]);
  });
});

describe("planted faults in frets", () => {
  const five = frettedSpec(5);

  /** Thrift as another designer might have ranged it: each range reaches down to what the program itself allows. */
  const loose = sampleText("designs", "thrift.yaml").replaceAll(
    /(string\.clearance\.(?:nut|end)\.(?:high|low)|fingerboard\.scoop\.(?:high|low)|fret\.clear): \{ (value: [^,]+), least: [^,]+, most: [^,]+,/g,
    (_, id, value) =>
      `${id}: { ${value}, least: ${id.includes("scoop") ? 0 : 0.05} mm, most: ${id.includes("scoop") ? 3 : 9} mm,`,
  );

  /** What is read of an order of that design, as a person would write it: no number stands where the program would refuse it. */
  function ordered(set: Record<string, number>): Spec {
    const lines = Object.entries(set).map(([id, value]) => `  ${id}: ${value} mm\n`);
    const text = orderText("thrift", 5, `set:\n${lines.join("")}`).replace(
      "frets: none",
      "frets: { count: 24 }",
    );
    const spec = resolved(text, {}, { designs: { thrift: loose } });
    if (!spec.ok) throw new Error(JSON.stringify(spec.problems));
    expect(problemsOf(spec.value)).toEqual([]);
    return spec.value;
  }

  it("find strings too low over the first fret, in an order that can be written", () => {
    expect(status(ordered({ "string.clearance.nut.high": 0.2 }), "fret.open")).toBe("pass");
    const low = { "string.clearance.nut.high": 0.05, "string.clearance.end.high": 0.3 };
    expect(status(ordered(low), "fret.open")).toBe("refuse");
    expect(status(ordered({ "fret.clear": 0.5 }), "fret.open")).toBe("refuse");
  });

  it("find strings that lie on a higher fret when stopped, in an order that can be written", () => {
    expect(status(ordered({ "string.clearance.end.high": 2 }), "fret.stopped")).toBe("pass");
    // A string that falls toward the board's end comes to lie under the frets' line before the bridge.
    const falls = {
      "string.clearance.nut.high": 0.9,
      "string.clearance.end.high": 0.05,
      "fingerboard.scoop.high": 0,
    };
    expect(status(ordered(falls), "fret.stopped")).toBe("refuse");
    const hardly = {
      "string.clearance.nut.high": 0.2,
      "string.clearance.end.high": 0.2,
      "fingerboard.scoop.high": 0,
    };
    expect(status(ordered(hardly), "fret.stopped")).toBe("attend");
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
    expect(foundBy(planted, "fret.open")).toMatchObject({ status: "refuse" });
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
