import type { Region } from "../region.ts";
import { type Combination, combine } from "./combine.ts";

/**
 * What lies within both of two regions, arcs kept. `empty` where they have no area in common; `invalid`, with which and
 * why, where a region is not good.
 */
export function intersection(a: Region, b: Region): Combination {
  return combine(a, b, (inA, inB) => inA && inB);
}
