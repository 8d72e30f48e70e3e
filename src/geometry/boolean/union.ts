import type { Region } from "../region.ts";
import { type Combination, combine } from "./combine.ts";

/**
 * All that lies within either of two regions, arcs kept. `empty` where both are; `invalid`, with which and why, where a
 * region is not good. Pieces that touch along a length become one; those that touch at a point stay two.
 */
export function union(a: Region, b: Region): Combination {
  return combine(a, b, (inA, inB) => inA || inB);
}
