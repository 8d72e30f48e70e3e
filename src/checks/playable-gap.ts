import { dimensionOf } from "../order/spec.ts";
import type { Check } from "./check.ts";

/** Whether neighbouring strings leave the gap that the design calls playable, at the nut or at the bridge. */
export function playableGap(where: "nut" | "bridge"): Check {
  return {
    id: `gap.playable.${where}`,
    of: ({ spec, instrument: { layout } }) => {
      const found = where === "nut" ? layout.nutGap : layout.bridgeGap;
      const limit = dimensionOf(spec, `${where}.gap.playable`);
      const what =
        where === "nut" ? "a finger stops two strings at once" : "the bow touches two strings at once";
      const move = where === "nut" ? "raise nut.gap" : "raise bridge.spread";
      return {
        ...{
          status: found < limit ? "attend" : "pass",
          stake: "spoilage",
          subject: where,
          found,
          limit,
          unit: "mm",
        },
        why: found < limit ? `under this gap ${what}: ${move}` : "no narrower than the design calls playable",
        source: `design ${spec.design}, ${where}.gap.playable (general trade knowledge: default, confirm)`,
        holds: [],
      };
    },
  };
}
