import { arrange } from "../arrangement/arrange.ts";
import { type Chain, chainOf } from "../arrangement/chain.ts";
import { outlinesWhere } from "../arrangement/outline.ts";
import { regionFrom } from "../arrangement/region-from.ts";
import { outlinesOf, type Region } from "../region.ts";
import type { Problem } from "../validate/problem.ts";
import { validateRegion } from "../validate/validate-region.ts";

/** What became of combining regions. `operand` tells which region was not good, from 0. */
export type Combination =
  | { readonly outcome: "ok"; readonly region: Region }
  | { readonly outcome: "empty" }
  | { readonly outcome: "invalid"; readonly operand: number; readonly problems: readonly Problem[] };

/** The second region's edges weigh so much more that one sum holds the windings of both. */
const second = 4096;

/** What of the plane is kept, by whether it is within the first and within the second region. */
export type Keep = (first: boolean, second: boolean) => boolean;

/**
 * The part of the plane that `keep` says, as a region. Edges of the two may cross, touch and lie on one another; what
 * lies on one another within `tolerance.snap` counts as one, and what would be thinner than that is not there. Arcs stay
 * arcs: each edge of the result is part of an edge of either region.
 */
export function combine(a: Region, b: Region, keep: Keep): Combination {
  for (const [operand, region] of [a, b].entries()) {
    const problems = validateRegion(region).filter(({ code }) => code !== "repeated-point");
    if (problems.length > 0) return { outcome: "invalid", operand, problems };
  }
  const [ofA, ofB] = [outlinesOf(a), outlinesOf(b)];
  const origin = (ofA[0] ?? ofB[0])?.points[0];
  if (origin === undefined) return { outcome: "empty" };
  const { x, y } = origin;
  const count = ofA.reduce((sum, { points }) => sum + points.length, 0);
  const both = together(chainOf(ofA, x, y, 1, 0), chainOf(ofB, x, y, second, count));
  const loops = outlinesWhere(arrange(both), (winding) => {
    const inB = Math.round(winding / second);
    return keep(winding - second * inB > 0, inB > 0);
  });
  const region = regionFrom(loops, x, y);
  return region.length === 0 ? { outcome: "empty" } : { outcome: "ok", region };
}

function together(a: Chain, b: Chain): Chain {
  const count = a.edges.length;
  return {
    edges: [...a.edges, ...b.edges],
    starts: [...a.starts, ...b.starts.map((start) => start + count)],
  };
}
