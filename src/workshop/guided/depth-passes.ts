/** How deep a bit cuts at once in hardwood, by its diameter, mm (S, of low authority: default, confirm). */
const chart: readonly { readonly diameter: number; readonly depth: number }[] = [
  { diameter: 6, depth: 1.6 },
  { diameter: 10, depth: 3.2 },
  { diameter: 12.7, depth: 4.8 },
  { diameter: 19, depth: 6.4 },
  { diameter: 25, depth: 9.5 },
];

/**
 * How deep a bit of a diameter may go at once, mm: the chart's figure for the next smaller one, for one thinner than any in proportion to the first,
 * and never over half the diameter.
 */
export function passDepth(diameter: number): number {
  const row = chart.filter((entry) => entry.diameter <= diameter + 1e-6).at(-1);
  const { diameter: least, depth } = chart[0]!;
  return Math.min(diameter / 2, row?.depth ?? (depth * diameter) / least);
}

/** The depths that a bit is set to one after another, mm from the face: equal steps, as few as a pass allows, the last the whole depth. */
export function depthPasses(depth: number, diameter: number): readonly number[] {
  const count = Math.max(1, Math.ceil(depth / passDepth(diameter) - 1e-9));
  return Array.from({ length: count }, (_, i) => (depth * (i + 1)) / count);
}
