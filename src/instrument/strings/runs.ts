import { step } from "../../step/step.ts";

/** Lengths in mm, per string from the highest to the lowest: centres across and over z = 0 at nut and bridge. */
export type LengthsInput = {
  readonly stringLength: number;
  readonly nut: readonly { readonly y: number; readonly z: number }[];
  readonly bridge: readonly { readonly y: number; readonly z: number }[];
};

/** Each string's true speaking length in mm, and its rise from nut to bridge seen from the side in degrees to z = 0. */
export type StringRuns = { readonly lengths: readonly number[]; readonly angles: readonly number[] };

/** A string runs straight from its place at the nut to its place at the bridge. */
export const stringRuns = step(
  "strings.runs",
  1,
  ({ stringLength, nut, bridge }: LengthsInput): StringRuns => {
    return {
      lengths: nut.map(({ y, z }, i) => Math.hypot(stringLength, bridge[i]!.y - y, bridge[i]!.z - z)),
      angles: nut.map(({ z }, i) => (Math.atan((bridge[i]!.z - z) / stringLength) * 180) / Math.PI),
    };
  },
);
