import { outlinesOf, type Region } from "../region.ts";
import { tolerance } from "../tolerance.ts";
import type { Problem } from "../validate/problem.ts";
import { validateRegion } from "../validate/validate-region.ts";
import { offsetOutlines } from "./offset-outlines.ts";
import type { OffsetOptions } from "./options.ts";

/** What became of the offset of a region. */
export type RegionOffset =
  | { readonly outcome: "ok"; readonly region: Region }
  | { readonly outcome: "split"; readonly region: Region }
  | { readonly outcome: "collapsed" }
  | { readonly outcome: "invalid"; readonly problems: readonly Problem[] };

/**
 * Offset a region, its holes with it.
 *
 * Positive `distance` (mm) grows the region, so that holes shrink and pieces may grow together; negative shrinks it.
 * Arcs stay arcs; corners that have to be gone round are rounded, or mitred where asked. `ok` when the result has as
 * many pieces and as many holes as the source; `split` when pieces or holes parted, joined, vanished or closed, while
 * something is left; `collapsed` when nothing is left, and for the empty region; `invalid` when the region is not
 * good (`validateRegion`) or the distance not finite. Every point of a rounded result is |distance| from the source's
 * outlines within `tolerance.exact`, and none nearer; a distance under that is none.
 */
export function offsetRegion(region: Region, distance: number, options: OffsetOptions = {}): RegionOffset {
  const problems = validateRegion(region).filter(({ code }) => code !== "repeated-point");
  if (!Number.isFinite(distance)) problems.push({ code: "not-finite", path: 0, index: 0 });
  if (problems.length > 0) return { outcome: "invalid", problems };
  if (region.length === 0) return { outcome: "collapsed" };
  if (Math.abs(distance) < tolerance.exact) return { outcome: "ok", region };
  const result = offsetOutlines(outlinesOf(region), distance, options);
  if (result.length === 0) return { outcome: "collapsed" };
  const alike = result.length === region.length && holesIn(result) === holesIn(region);
  return { outcome: alike ? "ok" : "split", region: result };
}

function holesIn(region: Region): number {
  return region.reduce((sum, { holes }) => sum + holes.length, 0);
}
