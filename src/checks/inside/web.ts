import { pathsApart } from "../../geometry/path-measures/paths-apart.ts";
import { plain } from "../../workshop/guided/fault.ts";
import { untried } from "../guided/fixture-check.ts";
import type { InsideRule } from "./inside-check.ts";

/** Whether enough of a plate is left between its openings. Found: the thinnest web, mm, or the limit where a plate has one opening. */
export const web: InsideRule = {
  name: "web",
  of: ({ openings, plates }) => {
    const usual = {
      ...({ stake: "spoilage", unit: "mm", limit: 8 } as const),
      source: "general trade knowledge: default, confirm",
    };
    if (plates === null) return untried(usual, "edge.none");
    const webs = openings.flatMap(({ edge, id }, i) =>
      openings.slice(i + 1).flatMap((other, k) => {
        if (plates[i] !== plates[i + 1 + k] || edge?.kind !== "ok" || other.edge?.kind !== "ok") return [];
        return [{ wide: pathsApart(edge.edge, other.edge.edge), between: `${id} and ${other.id}` }];
      }),
    );
    const least = webs.sort((a, b) => a.wide - b.wide)[0];
    if (least === undefined)
      return { ...usual, status: "pass", found: usual.limit, why: "every plate has one opening" };
    const thin = least.wide < usual.limit - 1e-3;
    return {
      ...{ ...usual, status: thin ? "refuse" : "pass", found: least.wide },
      why: thin
        ? `only ${plain(least.wide)} mm of the plate are left between ${least.between}: cut them through two plates`
        : `${plain(least.wide)} mm or more are left between openings, least between ${least.between}`,
    };
  },
};
