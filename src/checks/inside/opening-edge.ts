import { depthIn } from "../../geometry/path-measures/depth-in.ts";
import { plain } from "../../workshop/guided/fault.ts";
import { type FixtureRule, untried } from "../guided/fixture-check.ts";
import type { OneOpening } from "./inside-check.ts";

/** Whether an opening has a guided edge, closed all round. Found: 1 where it has. */
export const openingEdge: FixtureRule<OneOpening> = {
  name: "edge.none",
  of: ({ edge, setUp }) => {
    const usual = {
      ...({ stake: "spoilage", unit: "", limit: 1 } as const),
      source: "the recess's outline, the shop's cutters and guides",
    };
    if (setUp === null) return untried(usual, "machine.missing, cutter.missing, guide.missing");
    if (edge?.kind === "ok" && edge.edge.closed)
      return { ...usual, status: "pass", found: 1, why: "its guided edge is one, closed all round" };
    const why =
      edge?.kind === "untold"
        ? "which places the cutter can't touch could not be told: name another cutter in the order's fixtures"
        : "the offset leaves no edge in one piece: take a smaller cutter, or a guide nearer to its diameter";
    return { ...usual, status: "refuse", found: 0, why };
  },
};

/**
 * Whether the bit goes in where the guide stands clear of the opening's edge: a closed edge has no end to run in from, and needs none, since the cutter turns in
 * the waste before the guide comes to the edge. Found: the room there, mm.
 */
export const plungeRoom: FixtureRule<OneOpening> = {
  name: "run-in.missing",
  of: ({ edge, setUp }) => {
    const usual = {
      ...({ stake: "injury", unit: "mm", limit: 0.5 } as const),
      source: "published router guidance: start in the waste, clear of the edge; 0.5: default, confirm",
    };
    if (edge?.kind !== "ok" || setUp === null) return untried(usual, "edge.none");
    const found = depthIn(edge.edge, edge.plunge.at) - setUp.guide.diameter / 2;
    const tight = found < usual.limit - 1e-6;
    return {
      ...{ ...usual, status: tight ? "refuse" : "pass", found },
      why: tight
        ? `the guide stands ${plain(found)} mm off the edge where the bit goes in: plunge in the opening's middle, or take a smaller cutter and guide`
        : `a closed edge needs no run-in: the bit goes in ${plain(found)} mm clear of it, in waste`,
    };
  },
};
