import { dimensionOf } from "../order/spec.ts";
import type { Check } from "./check.ts";

/** Whether a bow finds every inner string alone. Found: the least range of tilts that does, degrees. */
export const bowAngle: Check = {
  id: "bow.angle",
  of: ({ spec, instrument: { bow } }) => {
    const angles = bow.strings.map(({ angle }) => angle);
    const found = Math.min(...angles);
    const { name } = spec.strings[angles.indexOf(found) + 1]!;
    const limit = dimensionOf(spec, "bow.angle.least");
    const status = found < limit ? "attend" : "pass";
    return {
      ...{ status, stake: "spoilage", subject: "bow", found, limit, unit: "deg" },
      why:
        status === "pass"
          ? "the bow finds every inner string alone"
          : `on ${name} the bow soon touches its neighbours: raise bridge.spread or lower fingerboard.radius`,
      source: `design ${spec.design}, bow.angle.least (general trade knowledge: default, confirm)`,
      holds: [],
    };
  },
};
