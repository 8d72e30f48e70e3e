/**
 * The largest speed of a router bit by its diameter, rpm (S: published charts, the lower figure where they give a range). To 50
 * the charts say 18,000, but a larger bit is never run faster than a smaller one.
 */
const chart: readonly { readonly diameter: number; readonly speed: number }[] = [
  { diameter: 25.4, speed: 16_000 },
  { diameter: 50, speed: 16_000 },
  { diameter: 63, speed: 12_000 },
  { diameter: 89, speed: 8000 },
];

/** The speed at its rim over which no cutter is run, and under which a shaper's is looked at, m/s (the first S, the second G). */
export const rimSpeeds = { most: 70, least: 40 } as const;

/** The speed of a cutter's rim, m/s, from its diameter in mm and its speed in rpm. */
export function rimSpeed(diameter: number, rpm: number): number {
  return (Math.PI * diameter * rpm) / 60_000;
}

/** What bounds a cutter's speed: rpm, and which of the bounds it is. */
export type SpeedBound = { readonly rpm: number; readonly by: "mark" | "diameter" | "rim" };

/**
 * The lowest of the bounds on a cutter's speed: the mark on the tool where it has one (null where not), 70 m/s at the rim, and on
 * a router the charts' figure for its diameter (mm). A router bit wider than any chart tells has a bound of 0.
 */
export function speedBound(kind: "shaper" | "router", diameter: number, mark: number | null): SpeedBound {
  const bounds: SpeedBound[] = [{ rpm: (rimSpeeds.most * 60_000) / (Math.PI * diameter), by: "rim" }];
  const row = chart.find((entry) => entry.diameter >= diameter - 1e-6);
  if (kind === "router") bounds.push({ rpm: row?.speed ?? 0, by: "diameter" });
  if (mark !== null) bounds.push({ rpm: mark, by: "mark" });
  return bounds.reduce((least, bound) => (bound.rpm <= least.rpm ? bound : least));
}

/** The speed that is set: the highest of the machine's that the bound allows, or its lowest where none is low enough; rpm. */
export function speedSet(speeds: readonly number[], bound: SpeedBound): number {
  const allowed = speeds.filter((rpm) => rpm <= bound.rpm + 1e-6);
  return allowed.length > 0 ? Math.max(...allowed) : Math.min(...speeds);
}
