import type { Fans, Half } from "./fan.ts";
import type { Run } from "./runs.ts";

/**
 * Fans put right by windings. Where edges a few nanometres long leave a junction in one direction, their order may be
 * taken wrong; then the windings found to the left of their runs do not agree round the junction. Neighbours are
 * swapped while that brings all into agreement, or else left as they were. `lefts` holds for each run the winding
 * found to its left, or undefined.
 */
export function settledFans(fans: Fans, runs: readonly Run[], lefts: readonly (number | undefined)[]): Fans {
  let settled: Map<number, readonly Half[]> | undefined;
  for (const [vertex, fan] of fans) {
    if (quarrels(fan, runs, lefts) === 0) continue;
    settled ??= new Map(fans);
    settled.set(vertex, swapped(fan, runs, lefts));
  }
  return settled ?? fans;
}

/** How many sectors of a fan are seen differently from their two sides. */
function quarrels(
  fan: readonly Half[],
  runs: readonly Run[],
  lefts: readonly (number | undefined)[],
): number {
  let count = 0;
  for (let k = 0; k < fan.length; k++) {
    const fromRight = leftOf(fan[k]!, runs, lefts);
    const fromLeft = leftOf(fan[k + 1 === fan.length ? 0 : k + 1]! ^ 1, runs, lefts);
    if (fromRight !== undefined && fromLeft !== undefined && fromRight !== fromLeft) count++;
  }
  return count;
}

/** The winding to the left of a half, as it was found for its run. */
function leftOf(
  half: Half,
  runs: readonly Run[],
  lefts: readonly (number | undefined)[],
): number | undefined {
  const left = lefts[half >> 1];
  if (left === undefined || half % 2 === 0) return left;
  return left - runs[half >> 1]!.weight;
}

/** The fan with neighbours swapped, each time the two that leave the fewest quarrels. */
function swapped(
  fan: readonly Half[],
  runs: readonly Run[],
  lefts: readonly (number | undefined)[],
): readonly Half[] {
  let best = fan;
  let fewest = quarrels(fan, runs, lefts);
  for (let round = 0; round < fan.length && fewest > 0; round++) {
    const tries = fan.map((_, k) => {
      const tried = [...best];
      const next = k + 1 === fan.length ? 0 : k + 1;
      [tried[k], tried[next]] = [tried[next]!, tried[k]!];
      return tried;
    });
    const counts = tries.map((tried) => quarrels(tried, runs, lefts));
    const least = Math.min(...counts);
    if (least >= fewest) break;
    [best, fewest] = [tries[counts.indexOf(least)]!, least];
  }
  return fewest === 0 ? best : fan;
}
