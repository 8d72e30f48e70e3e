import { describe, expect, it } from "vitest";
import { findings, refuses } from "../../src/checks/checks.ts";
import { fixtureRules, guidedChecks } from "../../src/checks/guided/guided-checks.ts";
import { fixtureNames } from "../../src/order/fixture-names.ts";
import { canBeOverruled } from "../../src/order/overrule.ts";
import type { Shop } from "../../src/order/shop.ts";
import type { Spec } from "../../src/order/spec.ts";
import { memoryStore } from "../../src/step/store.ts";
import { type Model, modelOf } from "../../src/workshop/model.ts";
import { everyCount, orderText, resolved, specOf } from "../samples.ts";

const store = memoryStore();
const five = specOf("sedge", 5);
const file = "wing-treble-router";
const found = (model: Model, name: string) =>
  findings(model, guidedChecks).find(({ id }) => id === `${name}.${file}`)!;

/** The spec with another shop. */
const inShop = (change: Partial<Shop>, spec = five): Spec => ({ ...spec, shop: { ...spec.shop, ...change } });

describe("the checks of fixtures", () => {
  it.each(everyCount)(
    "refuse nothing of $design with $count strings, each with stake, source and what was found",
    ({ design, count }) => {
      const spec = specOf(design, count, "", { hand: count % 2 === 0 ? "left" : "right" });
      const all = findings(modelOf(spec, store), guidedChecks);
      expect(all).toHaveLength(fixtureNames(spec).length * fixtureRules.length);
      for (const { id, status, why, source, holds } of all) {
        expect(status, `${id} ${why}`).not.toBe("refuse");
        expect(why.length).toBeGreaterThan(10);
        expect(source.length).toBeGreaterThan(10);
        expect(holds).toHaveLength(1);
        if (status === "attend")
          expect(id).toMatch(/^(grain\.against|removal|rim-speed|exit\.unsupported|tip)\./);
      }
    },
  );

  const { machines, cutters, guides, clamps, stock } = five.shop;
  it.each<[string, string, Spec, string]>([
    [
      "an empty shop",
      "machine.missing",
      inShop({ machines: [], cutters: [], guides: [] }),
      "the shop has no router",
    ],
    ["no cutter", "cutter.missing", inShop({ cutters: [] }), "no cutter that fits"],
    ["no guide", "guide.missing", inShop({ guides: [] }), "add one"],
    [
      "a guide that rides with nothing here",
      "guide.missing",
      specOf("sedge", 5, `fixtures:\n  ${file}: { guide: collar-80 }\n`),
      "name bearing-21",
    ],
    [
      "short cutters",
      "cutter.short",
      inShop({ cutters: cutters.map((one) => ({ ...one, length: 20 })) }),
      "take one that cuts 25 mm",
    ],
    [
      "a cutter for a power feed",
      "cutter.feed",
      inShop({ cutters: cutters.map((one) => ({ ...one, feed: "mechanical" as const })) }),
      "marked manual",
    ],
    [
      "cutters that bear too little speed",
      "speed.mark",
      inShop({ cutters: cutters.map((one) => ({ ...one, "most-speed": 5000 })) }),
      "set 5000 or less",
    ],
    [
      "no first guide",
      "removal",
      specOf("sedge", 5, `fixtures:\n  ${file}: { guide: pin-12, cutter: straight-12 }\n`),
      "lower saw.allowance to 1 mm",
    ],
    [
      "a bearing too high for its template",
      "guide.bearing",
      inShop(
        { guides: guides.map((one) => ({ ...one, height: 30 })) },
        specOf("sedge", 5, `fixtures:\n  ${file}: { guide: bearing-19 }\n`),
      ),
      "take a thinner guide|a lower guide",
    ],
    [
      "no sheet thick enough",
      "stock",
      inShop({ stock: { ...stock, sheets: stock.sheets.filter(({ thickness }) => thickness < 12) } }),
      "12 mm or more in stock",
    ],
    [
      "no sheet large enough",
      "stock",
      inShop({
        stock: { ...stock, sheets: stock.sheets.map((one) => ({ ...one, length: 300, width: 300 })) },
      }),
      "add one, or join two",
    ],
    ["no clamps", "hold.none", inShop({ clamps: [] }), "only 0 of 2 clamps"],
    [
      "clamps that fit nowhere",
      "hold.none",
      inShop({ clamps: clamps.map((one) => ({ ...one, base: [200, 300] as const })) }),
      "only 0 of 2 clamps",
    ],
    [
      "a hand-held router whose base slides where clamps would stand",
      "hold.none",
      specOf("sedge", 5, `fixtures:\n  ${file}: { machine: hand-router }\n`),
      "screw the work from beneath",
    ],
  ])("refuse %s: %s", (_, name, spec, words) => {
    const model = modelOf(spec, store);
    const finding = found(model, name);
    expect(finding.status).toBe("refuse");
    expect(finding.why).toMatch(new RegExp(words));
    expect(finding.holds).toEqual([file]);
    // One refused fixture doesn't trouble the rest: every other check still answers, and refuses nothing in the shop as it is.
    const all = findings(model, guidedChecks);
    expect(all).toHaveLength(fixtureNames(spec).length * fixtureRules.length);
    const others = all.filter((one) => refuses(one) && !one.holds.includes(file));
    if (JSON.stringify(spec.shop) === JSON.stringify(five.shop)) expect(others).toEqual([]);
    expect(machines.length).toBeGreaterThan(0);
  });
});

it("what protects someone is never overruled, and what spoils wood may be", () => {
  for (const name of [
    "feed.climb",
    "clamp.swept",
    "speed.mark",
    "guide.missing",
    "cutter.short",
    "hold.none",
    "hand.near",
    "run-in.missing",
    "rim-speed",
    "metal",
  ])
    expect(canBeOverruled(`${name}.${file}`), name).toBe(false);
  for (const name of ["removal", "cutter.large", "virtual-cut", "stock", "grain.against"])
    expect(canBeOverruled(`${name}.${file}`), name).toBe(true);
  const over = specOf(
    "sedge",
    5,
    `fixtures:\n  ${file}: { cutter: straight-12, guide: pin-12 }\noverrule:\n  - { check: removal.${file}, reason: light cuts by hand }\n`,
  );
  const finding = found(modelOf(over, store), "removal");
  expect(finding.overruled).toBe("light cuts by hand");
  expect(refuses(finding)).toBe(false);
  expect(
    resolved(orderText("sedge", 5, `overrule:\n  - { check: feed.climb.${file}, reason: no }\n`)).ok,
  ).toBe(false);
});
