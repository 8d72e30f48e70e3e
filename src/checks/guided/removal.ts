import { plain } from "../../workshop/guided/fault.ts";
import type { Fixture } from "../../workshop/guided/fixture.ts";
import { ofSetUp } from "./fixture-check.ts";

/** The saw's wander, what a last pass takes at most, and what a trimming pass on a router is published as, mm. */
const limits = { wander: 0.5, last: { shaper: 1.6, router: 1.5 }, trim: { usual: 1.5, most: 3 } } as const;

/** How much wood the passes take off, worked out from the guides' own diameters. Found: the most over its limit, or the first pass, mm. */
export const removal = ofSetUp<Pick<Fixture, "setUp" | "allowance">>(
  "removal",
  {
    ...{ stake: "injury", unit: "mm", limit: 0 },
    source:
      "the machine's manual; last pass and trimming: published guidance; side removal, wander: default, confirm",
  },
  ({ machine, guide, first }, { allowance }) => {
    const all = allowance + limits.wander;
    const leaves = first === null ? all : Math.min(all, (first.diameter - guide.diameter) / 2);
    const last = limits.last[machine.kind];
    if (leaves > last + 1e-6)
      return {
        ...{ status: "refuse", found: leaves, limit: last },
        why: `${guide.id} takes ${plain(leaves)} mm in the last pass: add a guide 2 mm larger in diameter for a pass before it, or lower saw.allowance to ${plain(last - limits.wander)} mm`,
      };
    const takes = all - leaves;
    const own = machine.kind === "shaper" ? machine["first-pass"] : undefined;
    const most = own ?? (machine.kind === "router" ? limits.trim.most : undefined);
    const found = takes > 0 ? takes : leaves;
    if (most !== undefined && takes > most + 1e-6)
      return {
        ...{ status: "refuse", found, limit: most },
        why: `the first pass takes ${plain(takes)} mm, over ${plain(most)}: lower saw.allowance to ${plain(most + leaves - limits.wander)} mm`,
      };
    const stated = own !== undefined || takes <= (machine.kind === "router" ? limits.trim.usual : 0) + 1e-6;
    const passes = first === null ? "one pass" : `${plain(takes)} with ${first.id}, then ${plain(leaves)}`;
    return {
      ...{ status: stated ? "pass" : "attend", found, limit: most ?? last },
      why: stated
        ? `${plain(all)} mm in all: ${passes}; default, confirm`
        : `the first pass takes ${plain(takes)} mm and the shop's file doesn't say what ${machine.id} takes at once: look in its manual`,
    };
  },
);
