import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { contradictions } from "../../src/instrument/contradictions.ts";
import { instrument } from "../../src/instrument/instrument.ts";
import type { Spec } from "../../src/order/spec.ts";
import { dimensionsOf } from "../../src/report/dimensions.ts";
import { memoryStore } from "../../src/step/store.ts";
import { modelOf } from "../../src/workshop/model.ts";
import { bare, forced } from "../forced.ts";
import { everyCount, frettedSpec, specOf } from "../samples.ts";

/** Every number of a spec's report by its name. */
function numbers(spec: Spec): Record<string, number> {
  const model = modelOf(spec, memoryStore());
  return Object.fromEntries(dimensionsOf(spec).map(({ id, of }) => [id, of(model)]));
}

const noScoop = { "fingerboard.scoop.high": 0, "fingerboard.scoop.low": 0 };

/** How far, at most, any string's reported gap strays from the straight line between its gaps at nut and board's end. */
function uneven(spec: Spec, all = numbers(spec)): number {
  const length = all["fingerboard.length"]!;
  const off = spec.strings.flatMap(({ name }) => {
    const gap = (at: number | string) => all[`string.${name}.gap.${at}`]!;
    return spec.stations.fingerboard.map((x) => {
      return Math.abs(gap(x) - gap("nut") - ((gap("end") - gap("nut")) * x) / length);
    });
  });
  expect(off.length).toBe(spec.strings.length * spec.stations.fingerboard.length);
  return Math.max(...off);
}

describe("a cone", () => {
  it.each(everyCount)(
    "of $design with $count strings, without scoop, has even gaps under every string",
    (at) => {
      const cone: Spec = { ...forced(specOf(at.design, at.count), noScoop), surface: "cone" };
      expect(uneven(cone)).toBeLessThan(0.01);
      // What a cylinder isn't: so the measure can tell one from the other.
      expect(uneven({ ...cone, surface: "cylinder" })).toBeGreaterThan(0.1);
    },
  );

  it("has them at random settings too", () => {
    let [built, skipped] = [0, 0];
    const share = fc.double({ min: 0, max: 1, noNaN: true });
    const ids = ["nut.gap", "nut.margin", "bridge.spread", "fingerboard.radius", "fingerboard.length"];
    const bases = everyCount.map(({ design, count }) => specOf(design, count));
    const random = fc.tuple(fc.constantFrom(...bases), fc.array(share, { minLength: 5, maxLength: 5 }));
    fc.assert(
      fc.property(random, ([base, shares]) => {
        const set = ids.map((id, i) => {
          const { least, most } = base.values[id]!;
          return [id, least + (most - least) * shares[i]!] as const;
        });
        const spec: Spec = { ...forced(base, { ...noScoop, ...Object.fromEntries(set) }), surface: "cone" };
        if (contradictions(spec, instrument(spec, memoryStore())).length > 0) {
          skipped++;
          return;
        }
        expect(uneven(spec)).toBeLessThan(0.01);
        built++;
      }),
      { seed: 417, numRuns: process.env.NIGHTLY === undefined ? 40 : 600 },
    );
    expect(built).toBeGreaterThan(2 * skipped);
  });
});

describe("the board's numbers", () => {
  it.each(everyCount)(
    "of $design with $count strings have the scoop under a straightedge along every string",
    (at) => {
      const spec = specOf(at.design, at.count);
      const all = numbers(spec);
      const of = (id: string) => all[id]!;
      const length = of("fingerboard.length");
      const across = (name: string, x: number) => {
        const [nut, bridge] = [of(`string.${name}.offset.nut`), of(`string.${name}.offset.bridge`)];
        return nut + ((bridge - nut) * x) / of("string.length");
      };
      /** The board at its ends: a circle through its edges. */
      const top = (where: "nut" | "end", y: number) => {
        const [r, half] = [of(`fingerboard.radius.${where}`), of(`fingerboard.width.${where}`) / 2];
        return of("fingerboard.edge") + Math.sqrt(r * r - y * y) - Math.sqrt(r * r - half * half);
      };
      const [first, last] = [spec.strings[0]!.name, spec.strings.at(-1)!.name];
      const chord = (name: string) => (top("nut", across(name, 0)) + top("end", across(name, length))) / 2;
      const [high, low] = [
        { y: across(first, length / 2), z: chord(first) - of("fingerboard.scoop.high") },
        { y: across(last, length / 2), z: chord(last) - of("fingerboard.scoop.low") },
      ];
      // The section at mid-length: the circle of its radius through the two places under the outer strings.
      const spread = (x: number) => across(first, x) - across(last, x);
      const radius =
        spec.surface === "cylinder"
          ? of("fingerboard.radius")
          : (of("fingerboard.radius") * spread(length / 2)) / spread(length);
      const half = Math.hypot(high.y - low.y, high.z - low.z) / 2;
      const down = Math.sqrt(radius ** 2 - half ** 2) / (2 * half);
      const middle = {
        y: (high.y + low.y) / 2 + (high.z - low.z) * down,
        z: (high.z + low.z) / 2 - (high.y - low.y) * down,
      };
      for (const { name } of spec.strings) {
        const y = across(name, length / 2);
        const wanted = chord(name) - middle.z - Math.sqrt(radius ** 2 - (y - middle.y) ** 2);
        expect(of(`string.${name}.scoop`)).toBeCloseTo(wanted, 5);
      }
      expect(of(`string.${first}.scoop`)).toBeCloseTo(of("fingerboard.scoop.high"), 6);
      expect(of(`string.${last}.scoop`)).toBeCloseTo(of("fingerboard.scoop.low"), 6);
      // The gaps at the ends are those that were set.
      expect(of(`string.${first}.gap.nut`)).toBeCloseTo(of("string.clearance.nut.high"), 6);
      expect(of(`string.${last}.gap.end`)).toBeCloseTo(of("string.clearance.end.low"), 6);
    },
  );

  it("are of the frets' tops where there are frets", () => {
    const [fretted, all] = [frettedSpec(5), numbers(frettedSpec(5))];
    const [high, low] = [fretted.strings[0]!.name, fretted.strings.at(-1)!.name];
    expect(all[`string.${high}.gap.nut`]).toBeCloseTo(all["string.clearance.nut.high"]!, 6);
    expect(all[`string.${low}.gap.end`]).toBeCloseTo(all["string.clearance.end.low"]!, 6);
  });

  it("of the blank at thrift's counts are those of the trade's table", () => {
    const thick = [4, 5, 6, 7].map(
      (count) => numbers(specOf("thrift", count))["fingerboard.blank.thickness"],
    );
    expect(thick).toEqual([12, 14, 16, 18]);
  });

  it.each(everyCount)("of $design with $count strings leave the blank its allowances, and no more", (at) => {
    const all = numbers(specOf(at.design, at.count));
    const of = (id: string) => all[`fingerboard.${id}`]!;
    for (const [size, wanted, most] of [
      ["length", of("length") + 2 * of("allowance.end"), 5],
      ["width", of("width.end") + 2 * of("allowance.side"), 1],
      ["thickness", of("thickness.end") + of("allowance.face"), 1],
    ] as const) {
      expect(of(`blank.${size}`)).toBeGreaterThanOrEqual(wanted - 1e-6);
      expect(of(`blank.${size}`)).toBeLessThan(wanted + most + 0.01);
    }
  });

  it("of the overhang are those of the core's line", () => {
    const all = numbers(specOf("mallow", 5));
    const over = all["fingerboard.length"]! - all["core.start"]!;
    expect(all["fingerboard.overhang"]).toBeCloseTo(over, 9);
    const fall = over * Math.tan((all["core.slope"]! * Math.PI) / 180);
    expect(all["fingerboard.overhang.gap"]).toBeCloseTo(all["core.drop"]! + fall, 6);
    // The bridge's wire would miss its recess in a core that begins there.
    const short = numbers(forced(bare(specOf("mallow", 5)), { "core.start": 300 }));
    expect([short["fingerboard.overhang"]! < 0, short["fingerboard.overhang.gap"]]).toEqual([true, 0]);
  });
});
