/** Medians of two things timed in turn, ms; `other` is NaN where it threw, and `threw` says with what. */
export type Pair = { readonly ours: number; readonly other: number; readonly threw?: string };

/**
 * Times two things in turn so that whatever else the machine does weighs on both alike. Ours is warm (done for `warmth`
 * ms) before the first round, and each round is at least `least` ms of it; the other has been done once.
 */
export function timePairs(
  ours: () => unknown,
  other: () => unknown,
  rounds: number,
  least = 20,
  warmth = 400,
): Pair {
  let threw: string | undefined;
  const start = performance.now();
  try {
    other();
  } catch (error) {
    threw = error instanceof Error ? error.message : String(error);
  }
  const seldom = Math.max(1, Math.floor(least / (performance.now() - start)));
  warmUp(ours, warmth);
  if (threw === undefined && seldom > 1) warmUp(other, warmth);
  const often = repeatsFor(ours, least);
  const [mine, theirs]: [number[], number[]] = [[], []];
  for (let round = 0; round < rounds; round++) {
    mine.push(timeOf(ours, often));
    if (threw === undefined) theirs.push(timeOf(other, seldom));
  }
  const pair = { ours: median(mine), other: median(theirs) };
  return threw === undefined ? pair : { ...pair, threw };
}

/** Does a thing again and again for so many ms. */
export function warmUp(task: () => unknown, warmth: number): void {
  const start = performance.now();
  while (performance.now() - start < warmth) task();
}

/** How often a thing has to be done to take that many ms when warm; bounded. */
function repeatsFor(task: () => unknown, least: number): number {
  let often = 1;
  while (often < 65_536 && timeOf(task, often) * often < least) often *= 2;
  return often;
}

function timeOf(task: () => unknown, often: number): number {
  const start = performance.now();
  for (let k = 0; k < often; k++) task();
  return (performance.now() - start) / often;
}

/** The middle of some numbers; NaN of none. */
export function median(numbers: readonly number[]): number {
  const sorted = [...numbers].sort((a, b) => a - b);
  return sorted[sorted.length >> 1] ?? Number.NaN;
}
