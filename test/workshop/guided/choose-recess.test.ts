import { describe, expect, it } from "vitest";
import type { GuidedShop } from "../../../src/workshop/guided/candidates.ts";
import { type Chosen, choose } from "../../../src/workshop/guided/choose.ts";
import type { CutWanted } from "../../../src/workshop/guided/set-up.ts";
import { specOf } from "../../samples.ts";

const { machines, cutters, guides } = specOf("sedge", 5).shop;
const shop: GuidedShop = { machines, cutters, guides };
const nothingNamed = { machine: null, cutter: null, guide: null };

const ids = (chosen: Chosen) =>
  chosen.kind === "none"
    ? []
    : [chosen.setUp.machine.id, chosen.setUp.cutter.id, chosen.setUp.guide.id, chosen.setUp.first?.id];
const faultsOf = (chosen: Chosen) => chosen.faults.map(({ check }) => check);
const whys = (chosen: Chosen) => chosen.faults.map(({ why }) => why).join("; ");

describe("a recess", () => {
  const recess: CutWanted = {
    ...{ kind: "router", thickness: 20, allowance: 0, hollow: 3.2, outward: 4, named: nothingNamed },
    recess: { depth: 20, template: 12 },
  };

  it("is cut by the router that is lowered into it, by a bit that reaches through the template, without a trimming pass", () => {
    const chosen = choose({ wanted: recess, shop });
    expect(ids(chosen)).toEqual(["hand-router", "straight-6-long", "bush-10", "bush-12"]);
    expect(chosen).toMatchObject({ kind: "ok", setUp: { passes: [] } });
    expect(chosen.kind === "ok" && chosen.because[1]!.why).toContain("of 20 deep under a template of 12");
  });

  it.each([
    [
      "cutter.short",
      { ...recess, recess: { depth: 30, template: 12 } },
      "a recess is 30 deep and a template of 12: take one that cuts 42 mm",
    ],
    [
      "cutter.short",
      {
        ...recess,
        hollow: 9,
        recess: { depth: 60, template: 12 },
        named: { ...nothingNamed, guide: "pin-12" },
      },
      "a recess is 60 deep: take one that cuts 60 mm",
    ],
    [
      "guide.bearing",
      { ...recess, hollow: 12, named: { ...nothingNamed, guide: "bearing-19" } },
      "before straight-19 is 43 deep: take one that cuts no more than 14.4 mm, or a bush",
    ],
  ] as const)("%s: %#", (check, wanted, words) => {
    const chosen = choose({ wanted, shop });
    expect(chosen.kind).toBe("refused");
    expect(faultsOf(chosen)).toContain(check);
    expect(whys(chosen)).toContain(words);
  });

  it("takes a bearing on a short bit, whose bearing rides from the first pass on", () => {
    const short = cutters.map((one) => ({ ...one, length: 10 }));
    const named = { ...nothingNamed, guide: "bearing-19" };
    const wanted = { ...recess, hollow: 12, named, recess: { depth: 9, template: 12 } };
    expect(choose({ wanted, shop: { ...shop, cutters: short } })).toMatchObject({ kind: "ok", faults: [] });
  });
});
