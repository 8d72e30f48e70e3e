import { thinnest } from "../instrument/wall.ts";
import { dimensionOf } from "../order/spec.ts";
import type { Check } from "./check.ts";

/** Whether fingers pass between any two buttons; on a bare head, whether the strings' ends keep from each other. */
export const tunerClear: Check = {
  id: "tuner.clear",
  of: ({ spec, instrument: { buttonGaps } }) => {
    const limit = dimensionOf(spec, "tuner.button.clear");
    const { left: found, between, mend } = thinnest(buttonGaps);
    const narrow = found < limit - 1e-6;
    return {
      ...{ status: narrow ? "refuse" : "pass", stake: "spoilage", subject: "head", found, limit, unit: "mm" },
      why: narrow
        ? `too little room between ${between}: ${mend}`
        : `room all round, the least between ${between}`,
      source: `design ${spec.design}, tuner.button.clear (general trade knowledge: default, confirm)`,
      holds: ["neck-plan", "head-face"],
    };
  },
};
