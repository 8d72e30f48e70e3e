import type { Check, Finding } from "./check.ts";
import { sawFiles } from "./saw-files.ts";

/** Whether the shop has a board that the neck's blank comes out of, its length along the grain. Found: what is missing in all, mm. */
export const blankStock: Check = {
  id: "blank.stock",
  of: ({ spec, sawing: { stock }, instrument: { neckBlank } }) => {
    const { length, width, thickness } = neckBlank;
    const blank = `a blank of ${length} x ${width} x ${thickness} mm`;
    const usual: Omit<Finding, "id" | "status" | "found" | "why"> = {
      ...{ stake: "spoilage", subject: "neck", limit: 0, unit: "mm", holds: sawFiles },
      source: "the shop's stock; what planing and parting take is general trade knowledge: default, confirm",
    };
    const change = "raise neck.plies, add a board to the shop's stock, or lower neck.allowance.*";
    if (stock.kind === "no-wood") {
      const woods = spec.neckWoods.join(" or ");
      return {
        ...{ ...usual, status: "refuse", found: Math.max(length, width, thickness) },
        why: `the shop has no board of ${woods} for ${blank}: add one to the shop's stock`,
      };
    }
    const way = stock.kind === "ok" ? stock.way : stock.nearest;
    const how = way.plies === 1 ? "in one piece" : `glued up from ${way.plies} plies`;
    if (stock.kind === "ok")
      return { ...usual, status: "pass", found: 0, why: `${blank} comes out of ${way.board}, ${how}` };
    const short = (["length", "width", "thickness"] as const).filter((size) => way.missing[size] > 0);
    const misses = short.map((size) => `${Math.round(way.missing[size] * 100) / 100} mm of ${size}`);
    return {
      ...{ ...usual, status: "refuse", found: short.reduce((sum, size) => sum + way.missing[size], 0) },
      why: `no board holds ${blank}; ${way.board}, ${how}, misses ${misses.join(" and ")}: ${change}`,
    };
  },
};
