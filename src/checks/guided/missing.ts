import type { Fault } from "../../workshop/guided/fault.ts";
import type { Fixture } from "../../workshop/guided/fixture.ts";
import type { FixtureRule } from "./fixture-check.ts";

const source = "the shop's file and what the order names";

function missing(
  name: "machine.missing" | "cutter.missing" | "guide.missing",
  what: string,
): FixtureRule<Pick<Fixture, "chosen">> {
  return {
    name,
    of: ({ chosen }) => {
      const fault: Fault | undefined = chosen.kind === "none" ? chosen.faults[0] : undefined;
      const refused = fault?.check === name;
      const usual = { stake: "injury", limit: 1, unit: "", source } as const;
      if (refused) return { ...usual, status: "refuse", found: 0, why: fault.why };
      const taken =
        chosen.kind === "none"
          ? `nothing wrong with the ${what}s; see ${fault!.check}`
          : chosen.because.map(({ id, why }) => `${id}: ${why}`).join("; ");
      return { ...usual, status: chosen.kind === "none" ? "attend" : "pass", found: 1, why: taken };
    },
  };
}

/** Whether the shop has a machine for a fixture's cut, a cutter on it and a guide for that. Found: 1 where it has. */
export const missingRules: readonly FixtureRule<Pick<Fixture, "chosen">>[] = [
  missing("machine.missing", "machine"),
  missing("cutter.missing", "cutter"),
  missing("guide.missing", "guide"),
];
