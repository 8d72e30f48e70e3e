import { type FixtureRule, untried } from "./fixture-check.ts";

/** Whether a shaper's collar runs over its cutter, or the shop lets it run under. Found: 1 where it runs under. */
export const collarUnder: FixtureRule = {
  name: "collar.under",
  of: (fixture) => {
    const usual = {
      ...({ stake: "injury", unit: "", limit: 0 } as const),
      source:
        "makers' manuals advise against a collar under the cutter; the shop's file says whether it is allowed",
    };
    if (fixture.setUp === null) return untried(usual, "machine.missing, cutter.missing, guide.missing");
    const { machine, guide } = fixture.setUp;
    if (machine.kind !== "shaper" || guide.kind !== "collar")
      return { ...usual, status: "pass", found: 0, why: `no collar runs under a cutter on ${machine.id}` };
    // The collar runs where the template lies: over the cutter on top of the work, or under both.
    if (fixture.template === "over")
      return {
        ...{ ...usual, status: "pass", found: 0 },
        why: `${guide.id} runs over the cutter, which the work covers`,
      };
    const allowed = machine["collar-under"] === "allowed";
    return {
      ...{ ...usual, status: allowed ? "attend" : "refuse", found: 1 },
      why: allowed
        ? `${guide.id} runs under the cutter: lifting the fixture drives it into the cutter; keep it down over all of its way`
        : `${guide.id} runs under the cutter, where lifting the fixture drives it into that, and the shop's file doesn't allow it: put the template on top of the work`,
    };
  },
};
