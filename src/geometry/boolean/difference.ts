import type { Region } from "../region.ts";
import { type Combination, combine } from "./combine.ts";

/**
 * What of region `a` does not lie within region `b`, arcs kept. `empty` where nothing is left; `invalid`, with which
 * and why, where a region is not good.
 */
export function difference(a: Region, b: Region): Combination {
  return combine(a, b, (inA, inB) => inA && !inB);
}
