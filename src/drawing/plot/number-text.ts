/** A number as it stands on a plot: so many decimals, and nothing is ever minus zero. */
export function numberText(value: number, decimals: number): string {
  const text = value.toFixed(decimals);
  return Number(text) === 0 ? (0).toFixed(decimals) : text;
}
