import { step } from "../../step/step.ts";

/** Lengths in mm; diameters from the highest string to the lowest. */
export type LayoutInput = {
  readonly nutGap: number;
  readonly bridgeSpread: number;
  readonly diameters: readonly number[];
};

/**
 * Where the strings' centres lie along y, mm, highest string first. The highest lies on the treble side, y positive; outer
 * centres lie at half the spread either side of the centreline.
 */
export type StringLayout = {
  readonly nut: readonly number[];
  readonly bridge: readonly number[];
  readonly nutSpread: number;
  readonly bridgeSpread: number;
  readonly nutGap: number;
  readonly bridgeGap: number;
};

/** The centres of strings with equal gaps, mm, highest string first, whose outer ones lie `spread` apart. */
export function spreadOut(spread: number, diameters: readonly number[]): number[] {
  return centres((spread - takenByStrings(diameters)) / (diameters.length - 1), diameters);
}

/** What the strings themselves take up of a spread: whole diameters between, half of each outer one; mm. */
function takenByStrings(diameters: readonly number[]): number {
  const all = diameters.reduce((sum, d) => sum + d, 0);
  return all - (diameters[0]! + diameters.at(-1)!) / 2;
}

/** Centres with equal gaps between the strings' skins: two neighbours are gap + (d1 + d2) / 2 apart. */
function centres(gap: number, diameters: readonly number[]): number[] {
  const spread = gap * (diameters.length - 1) + takenByStrings(diameters);
  let y = spread / 2;
  return diameters.map((d, i) => {
    if (i > 0) y -= gap + (diameters[i - 1]! + d) / 2;
    return y;
  });
}

/** String centres at nut and bridge: the nut from its gap, the bridge from its spread. */
export const stringLayout = step(
  "strings.layout",
  1,
  ({ nutGap, bridgeSpread, diameters }: LayoutInput): StringLayout => {
    const gaps = diameters.length - 1;
    const bridgeGap = (bridgeSpread - takenByStrings(diameters)) / gaps;
    return {
      nut: centres(nutGap, diameters),
      bridge: centres(bridgeGap, diameters),
      nutSpread: nutGap * gaps + takenByStrings(diameters),
      ...{ bridgeSpread, nutGap, bridgeGap },
    };
  },
);

/** A string centre's y where it passes x, mm, from its places at nut and bridge; `length` is the string length along x. */
export function stringAcross(
  { nut, bridge }: { nut: number; bridge: number },
  x: number,
  length: number,
): number {
  return nut + ((bridge - nut) * x) / length;
}
