import { describe, expect, it } from "vitest";
import { findings, refuses } from "../../src/checks/checks.ts";
import { insideChecks, insideRules } from "../../src/checks/inside/inside-checks.ts";
import { canBeOverruled } from "../../src/order/overrule.ts";
import type { Shop } from "../../src/order/shop.ts";
import type { Spec } from "../../src/order/spec.ts";
import { memoryStore } from "../../src/step/store.ts";
import { type Model, modelOf } from "../../src/workshop/model.ts";
import { everyCount, orderText, resolved, specOf } from "../samples.ts";

const store = memoryStore();
const five = specOf("sedge", 5);
const file = "neck-back-inside";
const found = (model: Model, name: string) =>
  findings(model, insideChecks).find(({ id }) => id === `${name}.${file}`)!;

const inShop = (change: Partial<Shop>): Spec => ({ ...five, shop: { ...five.shop, ...change } });
describe("the checks of inside templates", () => {
  it.each(everyCount)(
    "refuse nothing of $design with $count strings, each with stake, source and what was found",
    ({ design, count }) => {
      const spec = specOf(design, count, "", { hand: count % 2 === 0 ? "left" : "right" });
      const model = modelOf(spec, store);
      const all = findings(model, insideChecks);
      expect(all).toHaveLength(model.insides().length * insideRules.length);
      expect(all.length).toBeGreaterThan(0);
      for (const { id, status, why, source, holds } of all) {
        expect(status, `${id} ${why}`).toBe("pass");
        expect(why.length).toBeGreaterThan(10);
        expect(source.length).toBeGreaterThan(10);
        expect(holds).toEqual([id.replace(/^.*\./, "")]);
      }
    },
  );

  const { machines, cutters, guides, clamps, stock } = five.shop;
  const hand = machines.map((one) => ("mount" in one && one.mount === "hand" ? { ...one, base: 20 } : one));
  it.each<[string, string, Spec, string]>([
    ["an empty shop", "machine.missing", inShop({ machines: [] }), "the shop has no router"],
    ["no cutter", "cutter.missing", inShop({ cutters: [] }), "no cutter that fits"],
    ["no guide", "guide.missing", inShop({ guides: [] }), "add one"],
    [
      "short cutters",
      "cutter.short",
      inShop({ cutters: cutters.map((one) => ({ ...one, length: 30 })) }),
      "take one that cuts 31.65 mm",
    ],
    [
      "cutters too large for the corners",
      "cutter.large",
      inShop({ cutters: cutters.filter(({ diameter }) => diameter > 7) }),
      "leaves wood",
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
      "a bush so wide that corners come out round",
      "guide.large",
      specOf("sedge", 5, `fixtures:\n  ${file}: { guide: bush-18, cutter: straight-6-long }\n`),
      "take a guide nearer",
    ],
    [
      "a bush that the bit fills",
      "guide.bearing",
      inShop({ guides: guides.map((one) => ({ ...one, diameter: 7 })) }),
      "take a bush over 7.95 mm",
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
      inShop({ stock: { ...stock, sheets: stock.sheets.map((one) => ({ ...one, length: 90, width: 90 })) } }),
      "add one, or join two",
    ],
    [
      "a table router, on which nothing holds the work",
      "hold.none",
      specOf(
        "sedge",
        5,
        `fixtures:\n  ${file}: { machine: table-router, cutter: straight-12, guide: pin-12 }\n`,
      ),
      "name a router that is moved over the work",
    ],
    ["no clamp", "hold.none", inShop({ clamps: [] }), "only 0 of 2"],
    [
      "clamps that reach no further than the plate's edge",
      "hold.none",
      inShop({ clamps: clamps.map((one) => ({ ...one, reach: 12 })) }),
      "only 0 of 2",
    ],
    ["a router's base hardly wider than its bush", "base.rests", inShop({ machines: hand }), "outrigger"],
  ])("refuse %s", (_, name, spec, words) => {
    const model = modelOf(spec, store);
    const said = found(model, name);
    expect(said.status, said.why).toBe("refuse");
    expect(refuses(said)).toBe(true);
    expect(said.why).toContain(words);
  });

  it("never let an order overrule what guards hands and eyes, and tell what it names that isn't there", () => {
    for (const name of ["feed.climb", "clamp.swept", "cutter.short", "run-in.missing", "hold.none", "metal"])
      expect(canBeOverruled(`${name}.${file}`)).toBe(false);
    expect(canBeOverruled(`web.${file}`)).toBe(true);
    const wrong = resolved(orderText("sedge", 5, "fixtures:\n  body-back-inside: { cutter: straight-8 }\n"));
    expect(wrong.ok).toBe(false);
    expect(!wrong.ok && wrong.problems[0]).toMatchObject({
      code: "unknown-name",
      name: "fixtures.body-back-inside",
    });
    expect(!wrong.ok && wrong.problems[0]!.allowed).toContain("neck-back-inside");
    const own = resolved(orderText("sedge", 5, `fixtures:\n  ${file}: { handholds: [[10 mm, 10 mm]] }\n`));
    expect(!own.ok && own.problems[0]).toMatchObject({
      name: `fixtures.${file}.handholds`,
      allowed: "machine, cutter, guide",
    });
  });
});
