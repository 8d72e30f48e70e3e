import { gaussRule } from "./gauss-rule.ts";

/** A place along a line and how much of the line it stands for, mm. */
export type Weighted = { readonly x: number; readonly weight: number };

/**
 * Places from `from` to `to` to integrate at, by Gauss's rule of n points on each stretch between two of the `breaks` that lie
 * between: nothing may bend sharply but there. None where `to` is not beyond `from`.
 */
export function stretches(from: number, to: number, breaks: readonly number[], n: number): Weighted[] {
  if (!(to > from)) return [];
  const rule = gaussRule(n);
  const between = breaks.filter((x) => x > from && x < to).sort((a, b) => a - b);
  const ends = [from, ...between, to];
  return ends.slice(1).flatMap((end, i) => {
    const start = ends[i]!;
    return rule.map(([at, weight]) => ({ x: start + (end - start) * at, weight: (end - start) * weight }));
  });
}
