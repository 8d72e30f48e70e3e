import type { Voice } from "../order/voice.ts";
import type { Check } from "./check.ts";

/** Least and most angle that the strings may include at the bridge, degrees, and where that is from. */
const limits: {
  readonly [voice in Voice]: { readonly least: number; readonly most: number; readonly source: string };
} = {
  violin: { least: 154, most: 159.5, source: "published violin setups, 154 to 159.5" },
  viola: {
    least: 154,
    most: 159.5,
    source: "published viola setups give 157; the violin's range taken: default, confirm",
  },
  cello: { least: 152, most: 156, source: "general trade knowledge, 152 to 156: default, confirm" },
};

/** Whether the strings press on the bridge neither too lightly nor too hard, by the angle that they include there. */
export const includedAngle: Check = {
  id: "included-angle",
  of: ({ spec, forces }) => {
    const found = forces.angles.included;
    const { least, most, source } = limits[spec.voice];
    const status = found < least || found > most ? "attend" : "pass";
    const limit = found < least ? least : most;
    const why =
      found < least
        ? "the strings press too hard on the bridge: raise tailpiece.height"
        : found > most
          ? "the strings press too lightly on the bridge: lower tailpiece.height"
          : "within the usual range of this voice";
    return {
      ...{ status, stake: "spoilage", subject: "bridge", found, limit, unit: "deg" },
      why,
      source,
      holds: [],
    };
  },
};
