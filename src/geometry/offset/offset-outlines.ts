import { arrange } from "../arrangement/arrange.ts";
import { chainOf } from "../arrangement/chain.ts";
import { outlinesWhere } from "../arrangement/outline.ts";
import { regionFrom } from "../arrangement/region-from.ts";
import type { Path } from "../path.ts";
import type { Region } from "../region.ts";
import { completed, type OffsetOptions } from "./options.ts";
import { rawChain } from "./raw-chain.ts";

/**
 * The region at a distance (mm, not 0) from the one within outlines that have been found good, outer ones
 * counter-clockwise and holes clockwise; at least one.
 */
export function offsetOutlines(outlines: readonly Path[], distance: number, options: OffsetOptions): Region {
  const { x, y } = outlines[0]!.points[0]!;
  const raw = rawChain(chainOf(outlines, x, y), distance, completed(options));
  const loops = outlinesWhere(arrange(raw), (winding) => winding >= 1);
  return regionFrom(loops, x, y);
}
