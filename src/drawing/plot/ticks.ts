import { rounded } from "../../step/rounded.ts";

/** The steps that ticks may have, times a power of ten. */
const steps = [1, 2, 5] as const;

/** Values nearer each other than they are keyed are one. */
const same = 1e-6;

/** Ticks a step apart, in rising order; `decimals` is how many each is written with. */
export type Ticks = { readonly values: readonly number[]; readonly decimals: number };

/**
 * Ticks from the last before `least` to the first after `most`, in at most `count` steps of 1, 2 or 5 times a power of ten; the
 * smallest such step. Where both are one value they reach one unit upward from it. A most under its least, or a count under 2,
 * is a RangeError.
 */
export function ticksOver(least: number, most: number, count: number): Ticks {
  if (!(most >= least) || count < 2) throw new RangeError(`no ticks from ${least} to ${most} by ${count}`);
  if (most - least < same) return ticksOver(least, least + 1, count);
  for (const { size, decimals } of sizes((most - least) / count)) {
    const first = Math.floor(rounded(least / size));
    const last = Math.ceil(rounded(most / size));
    if (last - first <= count) return { values: between(first, last, size), decimals };
  }
  throw new RangeError(`no ticks from ${least} to ${most}`);
}

/** The ticks that lie from `least` to `most`, at most `count` steps in all that way; otherwise as ticksOver. */
export function ticksWithin(least: number, most: number, count: number): Ticks {
  if (!(most > least) || count < 1) throw new RangeError(`no ticks within ${least} to ${most} by ${count}`);
  const [found] = sizes((most - least) / count);
  if (found === undefined) throw new RangeError(`no ticks within ${least} to ${most}`);
  const { size, decimals } = found;
  const [first, last] = [Math.ceil(rounded(least / size)), Math.floor(rounded(most / size))];
  return { values: between(first, last, size), decimals };
}

function between(first: number, last: number, size: number): number[] {
  return Array.from({ length: last - first + 1 }, (_, i) => rounded((first + i) * size));
}

/** The steps that are no smaller than one, the smallest first. */
function* sizes(least: number): Iterable<{ readonly size: number; readonly decimals: number }> {
  for (let exponent = -6; exponent <= 9; exponent++) {
    for (const step of steps) {
      const size = step * decade(exponent);
      if (size >= least * (1 - 1e-9)) yield { size, decimals: Math.max(0, -exponent) };
    }
  }
}

/** A power of ten; by repeated products, which come out alike everywhere. */
function decade(exponent: number): number {
  let value = 1;
  for (let i = 0; i < Math.abs(exponent); i++) value *= 10;
  return exponent < 0 ? 1 / value : value;
}
