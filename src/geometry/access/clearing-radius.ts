import { outlinesOf, type Region } from "../region.ts";
import { segmentsOf } from "../segment.ts";
import { tolerance } from "../tolerance.ts";
import type { Problem } from "../validate/problem.ts";
import { cutterAccess } from "./cutter-access.ts";
import { type HollowCorner, hollowCorners } from "./hollow-corners.ts";

/** The cutter that leaves nothing: a radius in mm, or none because of corners. */
export type Clearing =
  | { readonly outcome: "radius"; readonly radius: number }
  | { readonly outcome: "none"; readonly corners: readonly HollowCorner[] }
  | { readonly outcome: "invalid"; readonly problems: readonly Problem[] };

/**
 * How small a cutter has to be to leave nothing: the largest radius, at most `most` mm, with which `cutterAccess` is
 * `clear`.
 *
 * Where the tightest hollow arc decides, it is that arc's radius exactly; where a narrow place decides, it is found
 * by halving to within `tolerance.exact`, from below. `none`, with the corners, where a corner is so sharp that a
 * cutter of `most` would leave more than `tolerance.exact` in it: no round cutter gets into it. `invalid` as in
 * `cutterAccess`.
 */
export function clearingRadius(region: Region, most: number, side: "inside" | "outside"): Clearing {
  const first = cutterAccess(region, most, side);
  if (first.outcome === "invalid") return first;
  if (first.outcome === "clear") return { outcome: "radius", radius: most };
  // A corner that turns by t keeps a cutter of radius r away from its point by r (1 / cos(t / 2) - 1).
  const corners = hollowCorners(region, side, 1e-3).filter(
    ({ turn }) => most * (1 / Math.cos((turn * Math.PI) / 360) - 1) > tolerance.exact,
  );
  if (corners.length > 0) return { outcome: "none", corners };
  const tightest = Math.min(most, leastHollowRadius(region, side));
  const isClear = (radius: number) => cutterAccess(region, radius, side).outcome === "clear";
  if (isClear(tightest)) return { outcome: "radius", radius: tightest };
  let [clear, leaves] = [0, tightest];
  while (leaves - clear > tolerance.exact / 2) {
    const middle = (clear + leaves) / 2;
    if (isClear(middle)) clear = middle;
    else leaves = middle;
  }
  return { outcome: "radius", radius: clear };
}

/** The radius of the tightest arc that is hollow for the cutter; infinite where there is none. */
function leastHollowRadius(region: Region, side: "inside" | "outside"): number {
  let least = Number.POSITIVE_INFINITY;
  for (const segment of outlinesOf(region).flatMap(segmentsOf))
    if (segment.kind === "arc" && segment.sweep > 0 === (side === "inside"))
      least = Math.min(least, segment.radius);
  return least;
}
