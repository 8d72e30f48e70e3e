import { dimensionOf } from "../order/spec.ts";
import type { Check } from "./check.ts";

/** Whether the wood between two neighbouring slots of the nut, or notches of the bridge, is thick enough not to break out. */
export function wallBetween(part: "nut" | "bridge"): Check {
  return {
    id: `wall.${part}`,
    of: ({ spec, instrument }) => {
      const slots = part === "nut" ? instrument.nut.slots : instrument.crownFace.notches;
      const walls = slots.slice(1).map(({ y, width }, i) => slots[i]!.y - y - (slots[i]!.width + width) / 2);
      const [found, limit] = [Math.min(...walls), dimensionOf(spec, `${part}.wall`)];
      const move = part === "nut" ? "raise nut.gap" : "raise bridge.spread";
      return {
        ...{
          status: found < limit ? "refuse" : "pass",
          stake: "spoilage",
          subject: part,
          found,
          limit,
          unit: "mm",
        },
        why:
          found < limit
            ? `the wood between two strings breaks out: ${move}`
            : "enough wood between any two strings",
        source: `design ${spec.design}, ${part}.wall (general trade knowledge: default, confirm)`,
        holds: [part],
      };
    },
  };
}
