import { describe, expect, it } from "vitest";
import type { Check } from "../../src/checks/check.ts";
import { findings } from "../../src/checks/checks.ts";
import { guidedChecks } from "../../src/checks/guided/guided-checks.ts";
import { insideChecks } from "../../src/checks/inside/inside-checks.ts";
import { canBeOverruled } from "../../src/order/overrule.ts";
import type { Spec } from "../../src/order/spec.ts";
import { memoryStore } from "../../src/step/store.ts";
import { modelOf } from "../../src/workshop/model.ts";
import { specOf } from "../samples.ts";

const store = memoryStore();
const five = specOf("sedge", 5);
const files = ["wing-treble-router", "neck-shaper", "neck-back-inside"];

/** The order in a shop whose sheets are all of one material, 12 and 19 thick, and whose laser cuts so thick. */
const inShop = (material: string, thickest = 6): Spec => {
  const { machines, stock } = five.shop;
  const sheets = stock.sheets.map((one) => ({ ...one, material }));
  return {
    ...five,
    shop: {
      ...five.shop,
      machines: machines.map((one) => (one.kind === "laser" ? { ...one, thickest } : one)),
      stock: { ...stock, sheets },
    },
  };
};
const checks: readonly Check[] = [...guidedChecks, ...insideChecks];
const told = (spec: Spec, name: string) => {
  const all = findings(modelOf(spec, store), checks);
  return files.map((file) => all.find(({ id }) => id === `${name}.${file}`)!);
};
const statuses = (spec: Spec, name: string) => told(spec, name).map(({ status }) => status);
const all = (status: string) => files.map(() => status);

describe("what a template is cut from", () => {
  it("is plywood or MDF by whatever name, with a sheet of anything else passed over", () => {
    for (const material of ["birch-plywood", "poplar-plywood", "mdf"]) {
      expect(statuses(inShop(material), "stock"), material).toEqual(all("pass"));
      expect(statuses(inShop(material), "printed.guide"), material).toEqual(all("pass"));
    }
    const { stock } = five.shop;
    const petg = { id: "a-petg", material: "petg", length: 3000, width: 3000, thickness: 12 };
    const both = { ...five, shop: { ...five.shop, stock: { ...stock, sheets: [petg, ...stock.sheets] } } };
    expect(statuses(both, "printed.guide")).toEqual(all("pass"));
    expect(told(both, "printed.guide")[0]!.why).toContain("birch-plywood");
  });

  it("is refused where a shop has nothing but what is printed, for fixtures and inside templates, and never overruled", () => {
    for (const [i, finding] of told(inShop("petg"), "printed.guide").entries()) {
      expect(finding).toMatchObject({ status: "refuse", stake: "injury", found: 1, holds: [files[i]] });
      expect(finding.why).toContain("cut the template from plywood or MDF");
      expect(canBeOverruled(finding.id)).toBe(false);
    }
  });
});

describe("what is put under a laser", () => {
  it.each(["pvc", "abs", "polycarbonate", "fibreglass", "coated-carbon", "treated-plywood"])(
    "is refused if it is %s and the laser cuts as thick as the template's sheet, and never overruled",
    (material) => {
      for (const finding of told(inShop(material, 20), "laser.material")) {
        expect(finding).toMatchObject({ status: "refuse", stake: "injury", found: 1 });
        expect(finding.why).toContain("keep");
        expect(canBeOverruled(finding.id)).toBe(false);
      }
      // A laser that doesn't get through it won't be tried on it.
      expect(statuses(inShop(material), "laser.material")).toEqual(all("pass"));
    },
  );

  it("is asked for where plywood isn't named, by the layer where several are glued up", () => {
    expect(statuses(inShop("plywood", 20), "laser.material")).toEqual(all("attend"));
    expect(statuses(inShop("birch-plywood", 20), "laser.material")).toEqual(all("pass"));
    // The neck's base is 38 thick of two sheets of 19, the others are of 12.
    expect(statuses(inShop("pvc", 18), "laser.material")).toEqual(["refuse", "pass", "refuse"]);
    expect(statuses(inShop("pvc", 19), "laser.material")).toEqual(all("refuse"));
  });

  it("has nothing to try where there is no sheet, and so has a bush's template", () => {
    const none = { ...five, shop: { ...five.shop, stock: { ...five.shop.stock, sheets: [] } } };
    expect(statuses(none, "stock")).toEqual(all("refuse"));
    for (const name of ["laser.material", "printed.guide"])
      expect(statuses(none, name), name).toEqual(all("attend"));
    expect(told(none, "guide.bearing")[2]).toMatchObject({
      ...{ status: "attend", why: expect.stringContaining("nothing to try: see stock") },
    });
  });
});
