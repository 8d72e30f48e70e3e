import type { Voice } from "../order/voice.ts";
import type { Check } from "./check.ts";

/** What a set of four strings pulls with, N (G). */
const usual: { readonly [voice in Voice]: readonly [least: number, most: number] } = {
  ...{ violin: [200, 240], viola: [215, 260], cello: [500, 600] },
};

/** Whether a set of four strings pulls as hard as sets of its voice do. */
export const tensionTotal: Check = {
  id: "tension.total",
  applies: ({ strings }) => strings.length === 4,
  of: ({ spec, forces }) => {
    const found = forces.balance.total;
    const [least, most] = usual[spec.voice];
    const status = found < least || found > most ? "attend" : "pass";
    return {
      ...{ status, stake: "spoilage", subject: "strings", found, limit: found < least ? least : most },
      unit: "N",
      why:
        found < least
          ? "a lighter set than the neck and the bow expect: take heavier strings"
          : found > most
            ? "a heavier set than neck and bridge expect: take lighter strings"
            : "within the usual range of a set of this voice",
      source: `sets of four for a ${spec.voice}, general trade knowledge: default, confirm`,
      holds: [],
    };
  },
};
