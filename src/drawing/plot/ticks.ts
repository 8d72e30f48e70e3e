import { rounded } from "../../step/rounded.ts";

/** The steps that ticks may have, times a power of ten. */
const steps = [1, 2, 5] as const;

/** Ticks from the first to the last of `values`, a step apart; `decimals` is how many each is written with. */
export type Ticks = { readonly values: readonly number[]; readonly decimals: number };

/**
 * Ticks that reach round `least` to `most`, at most `count` steps of 1, 2 or 5 times a power of ten; the smallest such step.
 * Where both are one value they reach one unit upward from it. A most under its least, or a count under 2, is a RangeError.
 */
export function ticksOver(least: number, most: number, count: number): Ticks {
  if (!(most >= least) || count < 2) throw new RangeError(`no ticks from ${least} to ${most} by ${count}`);
  const span = most - least;
  if (span === 0) return ticksOver(least, least + 1, count);
  let exponent = 0;
  while (decade(exponent) * count > span && exponent > -6) exponent--;
  while (decade(exponent + 1) * count <= span) exponent++;
  for (; ; exponent++) {
    for (const step of steps) {
      const size = step * decade(exponent);
      const first = Math.floor(rounded(least / size));
      const last = Math.max(first + 1, Math.ceil(rounded(most / size)));
      if (last - first > count) continue;
      const values = Array.from({ length: last - first + 1 }, (_, i) => rounded((first + i) * size));
      return { values, decimals: Math.max(0, -exponent) };
    }
  }
}

/** A power of ten; by repeated products, which come out alike everywhere. */
function decade(exponent: number): number {
  let value = 1;
  for (let i = 0; i < Math.abs(exponent); i++) value *= 10;
  return exponent < 0 ? 1 / value : value;
}
