/**
 * The least radius that a bandsaw blade follows, by its width, mm (S: published blade charts; where they disagree, the larger
 * figure).
 */
const chart: readonly { readonly width: number; readonly radius: number }[] = [
  { width: 3.2, radius: 4.8 },
  { width: 4.8, radius: 9.5 },
  { width: 6.4, radius: 15.9 },
  { width: 9.5, radius: 38 },
  { width: 12.7, radius: 64 },
  { width: 15.9, radius: 102 },
  { width: 19, radius: 140 },
  { width: 25.4, radius: 194 },
];

/** What a blade follows: a least radius in mm, or nothing known of it. */
export type BladeRadius = { readonly kind: "ok"; readonly radius: number } | { readonly kind: "no-figure" };

/**
 * The least radius that a blade of this width (mm) follows. A width between two of the chart's takes the wider one's radius;
 * one that is wider than all of them has no published figure.
 */
export function leastSawRadius(width: number): BladeRadius {
  const row = chart.find((entry) => entry.width >= width - 1e-6);
  return row === undefined ? { kind: "no-figure" } : { kind: "ok", radius: row.radius };
}

/** Where the chart is from, as a check or a sheet says it. */
export const radiusSource = "published blade charts, the larger figure where they disagree";
