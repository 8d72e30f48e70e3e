import { describe, expect, it } from "vitest";
import type { Shop } from "../../src/order/shop.ts";
import type { Spec } from "../../src/order/spec.ts";
import { memoryStore } from "../../src/step/store.ts";
import { modelOf } from "../../src/workshop/model.ts";
import { specOf } from "../samples.ts";
import { fixtureIn, told } from "./spoilt-fixture.ts";

const store = memoryStore();
const five = specOf("sedge", 5);
const withClamps = (clamps: Shop["clamps"], spec: Spec = five): Spec => ({
  ...spec,
  shop: { ...spec.shop, clamps },
});
const rule = (spec: Spec, file: string) => told(modelOf(spec, store), "hold.none", file);
const clamp = (wide: number, long: number, reach: number, count = 8) => ({
  ...{ id: "any", base: [wide, long] as const, reach, count },
});

describe.each(["wing-bass-router", "wing-treble-router"])("clamps that don't fit on %s", (file) => {
  const numbers = (why: string) =>
    /(\d+) would fit whose base is (\d+) mm wide or less, of a reach of (\d+) mm/.exec(why)!.map(Number);

  it.each([
    ["that fit nowhere", [clamp(300, 400, 55)]],
    ["of too little reach", [clamp(40, 80, 12)]],
    ["that aren't there", []],
  ])("%s are refused with the width and the reach that would fit, and such ones do", (_, clamps) => {
    const finding = rule(withClamps(clamps), file);
    expect(finding).toMatchObject({ status: "refuse", stake: "injury", found: 0 });
    const [, count, wide, reach] = numbers(finding.why);
    expect(count).toBe(finding.limit);
    expect(rule(withClamps([clamp(wide!, 2 * wide!, reach!)]), file).status).toBe("pass");
    expect(rule(withClamps([clamp(20, 40, reach!)]), file).status).toBe("pass");
    // The next wider ones don't, nor do those of less reach.
    if (wide! < 120)
      expect(rule(withClamps([clamp(wide! + 5, 2 * wide! + 10, reach!)]), file).status).toBe("refuse");
    expect(rule(withClamps([clamp(wide!, 2 * wide!, reach! - 2)]), file).status).toBe("refuse");
    // One of them alone is one too few.
    expect(rule(withClamps([clamp(wide!, 2 * wide!, reach!, 1)]), file)).toMatchObject({ found: 1 });
  });

  it("aren't told of where enough do, and under a router whose base slides there only a smaller base is", () => {
    expect(fixtureIn(five, file).holding).not.toHaveProperty("room");
    const hand = specOf("sedge", 5, `fixtures:\n  ${file}: { machine: hand-router }\n`);
    const finding = rule(hand, file);
    expect(finding.status).toBe("refuse");
    expect(fixtureIn(hand, file).holding).not.toHaveProperty("room");
    expect(finding.why).toContain("a smaller base to the shop's clamps, or screw the work from beneath");
  });
});
