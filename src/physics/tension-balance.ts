import { step } from "../step/step.ts";

/** Per string its tension, N, and where it lies across at nut and bridge, mm. */
export type BalanceInput = {
  readonly strings: readonly { readonly tension: number; readonly nut: number; readonly bridge: number }[];
};

/**
 * A set's tension, N: all of it, and its greatest less its least; and where its middle lies at nut and bridge, weighted by tension,
 * mm from the centreline to the treble side.
 */
export type Balance = {
  readonly total: number;
  readonly spread: number;
  readonly centre: { readonly nut: number; readonly bridge: number };
};

/** How the tension of a set is spread over it. */
export const tensionBalance = step("physics.tension-balance", 1, ({ strings }: BalanceInput): Balance => {
  const tensions = strings.map(({ tension }) => tension);
  const total = tensions.reduce((sum, tension) => sum + tension, 0);
  const centre = (where: "nut" | "bridge") =>
    strings.reduce((sum, string) => sum + string.tension * string[where], 0) / total;
  return {
    ...{ total, spread: Math.max(...tensions) - Math.min(...tensions) },
    centre: { nut: centre("nut"), bridge: centre("bridge") },
  };
});
