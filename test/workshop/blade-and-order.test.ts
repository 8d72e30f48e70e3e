import { describe, expect, it } from "vitest";
import type { Bandsaw } from "../../src/order/shop.ts";
import type { Spec } from "../../src/order/spec.ts";
import { memoryStore } from "../../src/step/store.ts";
import { modelOf } from "../../src/workshop/model.ts";
import { specOf } from "../samples.ts";

describe("the blade", () => {
  const spec = specOf("sedge", 4);
  const withBlades = (...blades: Bandsaw["blades"]): Spec => ({
    ...spec,
    shop: {
      ...spec.shop,
      machines: spec.shop.machines.map((one) => (one.kind === "bandsaw" ? { ...one, blades } : one)),
    },
  });
  const chosen = (given: Spec) => {
    const { saw, plan, side } = modelOf(given, memoryStore()).sawing.cuts;
    if (saw.kind !== "ok") return { saw: saw.kind };
    const tight = [plan, side].flatMap((sawn) => (sawn.kind === "ok" ? sawn.tight : []));
    return { width: saw.blade.width, radius: saw.blade.radius, tight: tight.length };
  };
  const [narrow, middle, wide] = [
    { width: 3.2, kerf: 0.8 },
    { width: 6.4, kerf: 0.9 },
    { width: 12.7, kerf: 1.1 },
  ] as const;

  it("is the widest that follows every place, or the narrowest with its tight places marked", () => {
    expect(chosen(withBlades(wide, narrow, middle))).toEqual({ width: 3.2, radius: 4.8, tight: 0 });
    expect(chosen(withBlades(wide, middle))).toMatchObject({ width: 6.4, radius: 15.9, tight: 4 });
    expect(chosen(withBlades(wide))).toMatchObject({ width: 12.7, radius: 64 });
    expect((chosen(withBlades(wide)) as { tight: number }).tight).toBeGreaterThan(4);
  });

  it("takes the next wider one's radius between two of the chart's, and knows none beyond it", () => {
    expect(chosen(withBlades({ width: 6.5, kerf: 0.9 }))).toMatchObject({ radius: 38 });
    expect(chosen(withBlades({ width: 40, kerf: 1.2 }))).toEqual({ saw: "none" });
  });
});

describe("the order of the cuts", () => {
  it("saws the plan first, back down, then the side on a blank taped square again", () => {
    for (const [hand, down, up] of [
      ["right", "treble side", "bass side"],
      ["left", "bass side", "treble side"],
    ] as const) {
      const { sawing, instrument } = modelOf(specOf("sedge", 5, "", { hand }), memoryStore());
      const { width, thickness } = instrument.neckBlank;
      expect(sawing.sequence).toEqual([
        {
          ...{ outline: "plan", onTable: "back", up: "front", tapedBack: "nothing" },
          ...{ work: thickness, guide: thickness + 13 },
        },
        {
          ...{ outline: "side", onTable: down, up, tapedBack: "every offcut of the first cut" },
          ...{ work: width, guide: width + 13 },
        },
      ]);
    }
  });
});
