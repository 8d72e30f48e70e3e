import { describe, expect, it } from "vitest";
import { contradictions } from "../../src/instrument/contradictions.ts";
import { instrument } from "../../src/instrument/instrument.ts";
import type { Spec, SpecValue } from "../../src/order/spec.ts";
import { memoryStore } from "../../src/step/store.ts";
import { specOf } from "../samples.ts";

/** A spec with values that no design would allow, as an order's. */
function forced(values: Readonly<Record<string, number>>, strings: number | string = 5): Spec {
  const spec = specOf("sedge", strings);
  const changed = Object.entries(values).map(([id, value]): [string, SpecValue] => {
    return [
      id,
      { ...spec.values[id]!, value, source: "order", position: { file: "order.yaml", line: 9, column: 3 } },
    ];
  });
  return { ...spec, values: { ...spec.values, ...Object.fromEntries(changed) } };
}

describe("dimensions that contradict each other", () => {
  it.each<[string, Record<string, number>, string]>([
    ["a board under the bridge", { "fingerboard.length": 327 }, "fingerboard.length"],
    ["a core that starts behind the bridge", { "core.start": 330 }, "core.start"],
    ["a core that ends before the bridge", { "core.end": 320 }, "core.end"],
    ["a foot wider than the core", { "bridge.foot.width": 60 }, "bridge.foot.width"],
    ["a crown thicker than the foot", { "bridge.top.thickness": 6 }, "bridge.top.thickness"],
    ["strings wider than their spread", { "bridge.spread": 2.9 }, "bridge.spread"],
    ["a radius under half the board", { "fingerboard.radius": 20 }, "fingerboard.radius"],
    [
      "a board narrower at its end",
      { "bridge.spread": 12, "fingerboard.margin.end": 1 },
      "fingerboard.margin.end",
    ],
    ["a tailpiece above its strings", { "tailpiece.height": 34 }, "tailpiece.height"],
    ["an afterlength too short to fall", { afterlength: 12 }, "afterlength"],
    ["an afterlength beyond the core", { afterlength: 140 }, "afterlength"],
    ["corners that overlap", { "fingerboard.corner": 40 }, "fingerboard.corner"],
    ["an arch that leaves no wood round the eye", { "bridge.wall": 5 }, "bridge.wall"],
    ["an arch through the crown", { "bridge.arch": 30 }, "bridge.arch"],
  ])("%s", (_, values, name) => {
    const spec = forced(values);
    const problems = contradictions(spec, instrument(spec, memoryStore()));
    expect(problems.map((problem) => problem.name)).toContain(name);
    for (const { code, found, allowed, hint, position } of problems) {
      expect(code).toBe("contradiction");
      expect(`${found} ${allowed} ${hint}`).not.toMatch(/NaN|undefined|Infinity/);
      expect(position.line).toBe(9);
    }
  });

  it("strings that don't arch: two thin ones between a thin and a thick one over a flat board", () => {
    const thin =
      "[E5, { name: A4, diameter: 0.12, mass: 0.05 }, { name: D4, diameter: 0.12, mass: 0.05 }, { name: G3, diameter: 4, mass: 30 }]";
    const spec = forced({ "fingerboard.radius": 50000 }, thin);
    const problems = contradictions(spec, instrument(spec, memoryStore()));
    expect(problems[0]).toMatchObject({
      name: "fingerboard.radius",
      found: expect.stringContaining("don't arch"),
    });
  });

  it("is silent on the same spec unchanged", () => {
    const spec = forced({});
    expect(contradictions(spec, instrument(spec, memoryStore()))).toEqual([]);
  });
});
