import { describe, expect, it } from "vitest";
import type { Spec } from "../../src/order/spec.ts";
import { memoryStore } from "../../src/step/store.ts";
import { modelOf } from "../../src/workshop/model.ts";
import { forced } from "../forced.ts";
import { foundBy } from "../found-by.ts";
import { everyCount, specOf } from "../samples.ts";

const found = (spec: Spec) => foundBy(modelOf(spec, memoryStore()), "blank.stock.fingerboard")!;

/** A spec in a shop with other boards of ebony than those that the sample shop has. */
function withEbony(
  spec: Spec,
  sizes: readonly (readonly [length: number, width: number, thickness: number])[],
): Spec {
  const { boards, sheets } = spec.shop.stock;
  const own = sizes.map(([length, width, thickness], i) => {
    return { id: `ebony-${i}`, wood: "african-ebony", length, width, thickness };
  });
  const others = boards.filter(({ wood }) => wood !== "african-ebony");
  return { ...spec, shop: { ...spec.shop, stock: { boards: [...others, ...own], sheets } } };
}

describe("the board that a fingerboard's blank comes out of", () => {
  it.each(everyCount)("is in the sample shop for $design with $count strings", ({ design, count }) => {
    expect(found(specOf(design, count))).toMatchObject({ status: "pass", found: 0, subject: "fingerboard" });
  });

  const five = specOf("sedge", 5);
  it.each<[string, Spec, number, RegExp]>([
    ["is too thin", withEbony(five, [[700, 90, 13.5]]), 0.5, /misses 0\.5 mm of thickness/],
    ["is too short, however wide", withEbony(five, [[289, 400, 20]]), 1, /misses 1 mm of length/],
    ["is too narrow", withEbony(five, [[700, 53, 20]]), 1, /misses 1 mm of width/],
    [
      "isn't there in this wood",
      withEbony(five, []),
      290,
      /no board of african-ebony for a blank of 290 x 54 x 14/,
    ],
    [
      "is outgrown by the fingerboard",
      forced(five, { "fingerboard.edge": 15 }),
      4,
      /misses 4 mm of thickness/,
    ],
  ])("%s: refused, and the fingerboard's files held back", (_, spec, missing, why) => {
    const finding = found(spec);
    expect(finding).toMatchObject({ status: "refuse", holds: ["fingerboard", "fingerboard-saw"] });
    expect(finding.found).toBeCloseTo(missing, 9);
    expect(finding.why).toMatch(why);
  });

  it("is never glued up for a fingerboard, as it may be for a neck", () => {
    const halves = withEbony(forced(five, { "neck.plies": 3 }), [[2000, 20, 30]]);
    expect(found(halves).status).toBe("refuse");
    expect(found(withEbony(five, [[290, 54, 14]])).status).toBe("pass");
  });
});
