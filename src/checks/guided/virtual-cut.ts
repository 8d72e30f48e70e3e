import { plain } from "../../workshop/guided/fault.ts";
import type { Fixture } from "../../workshop/guided/fixture.ts";
import { type FixtureRule, untried } from "./fixture-check.ts";

/** How far what is left may be from the finished edge, mm. */
const within = 0.01;

/** Whether the fixture has a guided edge at all. Found: 1 where it has. */
export const edgeNone: FixtureRule = {
  name: "edge.none",
  of: ({ edge, setUp }) => {
    const usual = {
      stake: "spoilage",
      unit: "",
      limit: 1,
      source: "the part's outline, the shop's cutters and guides",
    } as const;
    if (setUp === null) return untried(usual, "machine.missing, cutter.missing, guide.missing");
    if (edge?.kind === "ok")
      return { ...usual, status: "pass", found: 1, why: "the edge is one, led on at both ends" };
    const why = {
      "not-open": "all of the outline is cut, so that nothing is left to hold it by: make two set-ups",
      "meets-itself":
        "run-in, run-out and base come across one another: raise the distance between the joined edge's ends, or turn the edges beside it apart",
      untold:
        "which places the cutter can't touch could not be told: name another cutter in the order's fixtures",
      "no-edge":
        "the offset leaves no edge in one piece: take a smaller cutter, or a guide nearer to its diameter",
    }[edge?.kind ?? "no-edge"];
    return { ...usual, status: "refuse", found: 0, why };
  },
};

/** Whether rolling the guide along the written edge leaves the part. Found: the greatest deviation outside of what is left to the hand, mm. */
export const virtualCutRule: FixtureRule<Pick<Fixture, "cut">> = {
  name: "virtual-cut",
  of: ({ cut }) => {
    const usual = {
      ...({ stake: "spoilage", unit: "mm", limit: within } as const),
      source: "the drawing tried by a virtual cut; not the wood: make the test strip",
    };
    if (cut === null) return untried(usual, "edge.none");
    if (cut.kind === "nothing")
      return {
        ...usual,
        status: "refuse",
        found: 1,
        why: "the guide rolls nowhere along the edge: take a smaller guide",
      };
    const { deviation, at, joint } = cut;
    if (joint > within)
      return {
        ...usual,
        status: "refuse",
        found: joint,
        why: `the cutter comes ${plain(joint)} mm into the joined edge: lead the edge on outward there`,
      };
    const off = deviation > within;
    return {
      ...{ ...usual, status: off ? "refuse" : "pass", found: deviation },
      why: off
        ? `what is left is ${deviation.toFixed(3)} mm off at ${plain(at.x)}, ${plain(at.y)}: the guided edge and the measured diameters don't go together`
        : "the drawing brings the part out within 0.01 mm; the wood is tried by the test strip",
    };
  },
};
