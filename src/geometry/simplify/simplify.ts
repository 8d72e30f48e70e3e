import type { Path } from "../path.ts";
import { tolerance } from "../tolerance.ts";
import { pointProblems } from "../validate/point-problems.ts";
import type { Problem } from "../validate/problem.ts";
import { joinEnds } from "./join-ends.ts";
import { mergeNeighbours } from "./merge-neighbours.ts";
import { withoutDuplicates } from "./without-duplicates.ts";
import { withoutShort } from "./without-short.ts";

/**
 * What counts as nothing, mm: ends nearer than `join` are joined, segments shorter than `short` are dropped, and
 * neighbours within `stray` of one line or circle are merged.
 */
export type SimplifyOptions = { readonly join?: number; readonly short?: number; readonly stray?: number };

/** What became of simplifying paths. */
export type Simplified =
  | { readonly outcome: "ok"; readonly paths: readonly Path[] }
  | { readonly outcome: "empty" }
  | { readonly outcome: "invalid"; readonly problems: readonly Problem[] };

/**
 * Clean drawn paths: drop segments that are too short, join open paths end to end (turning them where that takes it)
 * and close those whose ends meet, merge neighbours on one line or one circle, and keep one of paths that are the
 * same.
 *
 * An arc never grows past half a circle. `stray` and `short` are `tolerance.exact` unless said, `join` is
 * `tolerance.join`. No point moves but joined ends, which meet half way. `empty` when nothing is left; `invalid` when
 * points are not finite, out of range, or an arc is more than half a circle. Nothing is dropped for being
 * self-crossing.
 */
export function simplify(paths: readonly Path[], options: SimplifyOptions = {}): Simplified {
  const { join = tolerance.join, short = tolerance.exact, stray = tolerance.exact } = options;
  const bad = new Set<Problem["code"]>(["not-finite", "out-of-range", "bulge-over-half"]);
  const problems = paths
    .flatMap((path, which) => pointProblems(path, which))
    .filter(({ code }) => bad.has(code));
  if (problems.length > 0) return { outcome: "invalid", problems };
  const long = paths.map((path) => withoutShort(path, short)).filter(({ points }) => points.length > 1);
  const joined = joinEnds(long, join);
  const merged = joined.map((path) => mergeNeighbours(path, stray));
  const kept = withoutDuplicates(merged, tolerance.exact);
  return kept.length === 0 ? { outcome: "empty" } : { outcome: "ok", paths: kept };
}
