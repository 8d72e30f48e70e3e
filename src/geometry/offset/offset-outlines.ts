import { arrangeUpTo } from "../arrangement/arrange.ts";
import { type Chain, chainOf } from "../arrangement/chain.ts";
import { outlinesWhere } from "../arrangement/outline.ts";
import { regionFrom } from "../arrangement/region-from.ts";
import type { Path } from "../path.ts";
import { outlinesOf, type Region } from "../region.ts";
import { completed, type OffsetOptions } from "./options.ts";
import { rawChain } from "./raw-chain.ts";

/**
 * The region at a distance (mm, not 0) from the one within outlines that have been found good, outer ones
 * counter-clockwise and holes clockwise; at least one.
 */
export function offsetOutlines(outlines: readonly Path[], distance: number, options: OffsetOptions): Region {
  const { x, y } = outlines[0]!.points[0]!;
  return offsetChain(chainOf(outlines, x, y), x, y, distance, options);
}

/**
 * The same for a chain of edges about (x, y).
 *
 * Where very many short lines lie within the distance of one another, their parallels cross about as often as their
 * number squared. Then it is done in two halves, which is the same set (a disc of d is the sum of two of d / 2), and
 * what the first half leaves has no such places any more; again in halves, `halvings` times at most.
 */
export function offsetChain(
  chain: Chain,
  x: number,
  y: number,
  distance: number,
  options: OffsetOptions,
  halvings = 6,
): Region {
  const raw = rawChain(chain, distance, completed(options));
  const most = halvings > 0 ? 3 * raw.edges.length + 500 : Number.POSITIVE_INFINITY;
  const arrangement = arrangeUpTo(raw, most);
  if (arrangement !== "crowded") return regionFrom(outlinesWhere(arrangement, isCovered), x, y);
  const half = outlinesOf(offsetChain(chain, x, y, distance / 2, options, halvings - 1));
  return half.length === 0 ? [] : offsetChain(chainOf(half, x, y), x, y, distance / 2, options, halvings - 1);
}

function isCovered(winding: number): boolean {
  return winding >= 1;
}
