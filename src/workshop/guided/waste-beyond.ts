import type { Point } from "../../geometry/point.ts";

/** How far a blank goes on along x beyond the first and the last end of what is cut of it, mm. */
export function wasteBeyond(
  run: readonly Point[],
  { minX, maxX }: { readonly minX: number; readonly maxX: number },
): readonly [first: number, last: number] {
  const [first, last] = [run[0]!.x, run.at(-1)!.x];
  return first < last ? [first - minX, maxX - last] : [maxX - first, last - minX];
}
