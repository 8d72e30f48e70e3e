import { depthIn } from "../../geometry/path-measures/depth-in.ts";
import { pathsApart } from "../../geometry/path-measures/paths-apart.ts";
import { plain } from "../../workshop/guided/fault.ts";
import { untried } from "../guided/fixture-check.ts";
import type { InsideRule } from "./inside-check.ts";

/** Whether there are as many clamps on the plate as its length asks for, of those that stand beside the work and press on it. Found: how many there are. */
export const plateHeld: InsideRule = {
  name: "hold.none",
  of: ({ layout, setUp, under }) => {
    const usual = {
      ...({ stake: "injury", unit: "", limit: 2 } as const),
      source: "published router and shaper guidance: a hold-down about every 300 mm, two at least",
    };
    if (layout === null) return untried(usual, "edge.none");
    const { clamps, wanted: limit, plate } = layout;
    if (setUp?.machine.moves === "work")
      return {
        ...{ ...usual, limit, found: 0, status: "refuse" },
        why: `on ${setUp.machine.id} the work lies between template and table, and no clamp that moves with it presses it: name a router that is moved over the work`,
      };
    const inWork = clamps.findIndex(({ base }) => pathsApart(base, under) < 0);
    if (inWork >= 0)
      return {
        ...{ ...usual, limit, found: clamps.length - 1, status: "refuse" },
        why: `clamp ${inWork + 1} would stand where the work lies: move it beside that`,
      };
    const idle = clamps.findIndex(({ pad }) => depthIn(plate, pad) <= 0);
    if (idle >= 0) {
      const { x, y } = clamps[idle]!.pad;
      return {
        ...{ ...usual, limit, found: clamps.length - 1, status: "refuse" },
        why: `clamp ${idle + 1} presses beside the plate, at ${plain(x)}, ${plain(y)}: move it`,
      };
    }
    const found = clamps.length;
    const few = found < limit;
    return {
      ...{ ...usual, status: few ? "refuse" : "pass", found, limit },
      why: few
        ? `only ${found} of ${limit} clamps fit clear of the router's base: add one of more reach to the shop's clamps`
        : `${found} clamps press the plate on the work and on packings as high`,
    };
  },
};
