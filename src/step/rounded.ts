/**
 * A number as it is keyed and written: rounded to 1e-6 and never minus zero.
 *
 * Throws a RangeError for NaN and the infinities: they have no place in a drawing, and stopping at the door names the
 * step that made them.
 */
export function rounded(value: number): number {
  if (!Number.isFinite(value))
    throw new RangeError(`a number that is not finite (${value}) reached a step or a writer`);
  const scaled = Math.round(value * 1e6);
  if (!Number.isSafeInteger(scaled)) return value;
  return scaled / 1e6 + 0;
}
