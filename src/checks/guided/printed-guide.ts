import type { Fixture } from "../../workshop/guided/fixture.ts";
import { type FixtureRule, untried } from "./fixture-check.ts";

/** What a guided edge may be made of, by how a sheet's material is named. */
const sheets = /plywood|mdf|phenolic|aluminium/;

/** Whether the guide rides on a sheet of wood or metal: a printed part never guides a cutter. Found: 1 where it doesn't. */
export const printedGuide: FixtureRule<Pick<Fixture, "sheet">> = {
  name: "printed.guide",
  of: ({ sheet }) => {
    const usual = {
      ...({ stake: "injury", unit: "", limit: 0 } as const),
      source:
        "policy of this project: printed parts soften and split (general trade knowledge: default, confirm)",
    };
    if (sheet?.kind !== "ok") return untried(usual, "stock");
    const good = sheets.test(sheet.material);
    return {
      ...{ ...usual, status: good ? "pass" : "refuse", found: good ? 0 : 1 },
      why: good
        ? `the guided edge is of ${sheet.material}`
        : `the guided edge is of ${sheet.material}: cut the template from plywood or MDF; a printed part never guides a cutter`,
    };
  },
};
