import { chainOf } from "../arrangement/chain.ts";
import type { Path } from "../path.ts";
import { outlinesOf, type Region } from "../region.ts";
import { reversedPath } from "../reversed-path.ts";
import { tolerance } from "../tolerance.ts";
import type { Problem } from "../validate/problem.ts";
import { soundOutline } from "../validate/sound-outline.ts";
import { offsetChain } from "./offset-outlines.ts";
import type { OffsetOptions } from "./options.ts";

/** What became of the offset of one closed path. */
export type PathOffset =
  | { readonly outcome: "ok"; readonly path: Path }
  | { readonly outcome: "split"; readonly region: Region }
  | { readonly outcome: "collapsed" }
  | { readonly outcome: "invalid"; readonly problems: readonly Problem[] };

/**
 * Offset a closed path.
 *
 * Positive `distance` (mm) grows the shape and negative shrinks it, whatever its winding. Arcs stay arcs; corners
 * that have to be gone round are rounded, or mitred where asked. `ok` with one counter-clockwise path; `split` when
 * the result has several outlines, as pieces with holes; `collapsed` when nothing is left; `invalid` when the input
 * is open, has bad points or crosses itself, or the distance is not finite. Every point of a rounded result is
 * |distance| from the input within `tolerance.exact`, and none nearer; a distance under that is none. What would be
 * thinner than `tolerance.snap` is not there. Holes are not looked at: offset a region for that.
 */
export function offsetPath(path: Path, distance: number, options: OffsetOptions = {}): PathOffset {
  const { problems: found, chain, area } = soundOutline(path);
  const problems = found.filter(({ code }) => code !== "repeated-point");
  if (!Number.isFinite(distance)) problems.push({ code: "not-finite", path: 0, index: 0 });
  if (problems.length > 0) return { outcome: "invalid", problems };
  if (Math.abs(distance) < tolerance.exact)
    return { outcome: "ok", path: area > 0 ? path : reversedPath(path) };
  const { x, y } = path.points[0]!;
  const oriented = area > 0 ? chain : chainOf([reversedPath(path)], x, y);
  const region = offsetChain(oriented, x, y, distance, options);
  const [only, more] = outlinesOf(region);
  if (only === undefined) return { outcome: "collapsed" };
  return more === undefined ? { outcome: "ok", path: only } : { outcome: "split", region };
}
