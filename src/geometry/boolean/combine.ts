import { outlinesWhere } from "../arrangement/outline.ts";
import { regionFrom } from "../arrangement/region-from.ts";
import type { Region } from "../region.ts";
import type { Problem } from "../validate/problem.ts";
import { validateRegion } from "../validate/validate-region.ts";
import { overlay } from "./overlay.ts";

/** What became of combining regions. `operand` tells which region was not good, from 0. */
export type Combination =
  | { readonly outcome: "ok"; readonly region: Region }
  | { readonly outcome: "empty" }
  | { readonly outcome: "invalid"; readonly operand: number; readonly problems: readonly Problem[] };

/** What of the plane is kept, by whether it is within the first and within the second region. */
export type Keep = (first: boolean, second: boolean) => boolean;

/**
 * The part of the plane that `keep` says, as a region. Edges of the two may cross, touch and lie on one another; what
 * lies on one another within `tolerance.snap` counts as one, and what would be thinner than that is not there. Arcs
 * stay arcs: each edge of the result is part of an edge of either region.
 */
export function combine(a: Region, b: Region, keep: Keep): Combination {
  for (const [operand, region] of [a, b].entries()) {
    const problems = validateRegion(region).filter(({ code }) => code !== "repeated-point");
    if (problems.length > 0) return { outcome: "invalid", operand, problems };
  }
  const { arrangement, origin, inFirst, inSecond } = overlay(a, b);
  const kept = (winding: number) => keep(inFirst(winding), inSecond(winding));
  const region = regionFrom(outlinesWhere(arrangement, kept), origin.x, origin.y);
  return region.length === 0 ? { outcome: "empty" } : { outcome: "ok", region };
}
