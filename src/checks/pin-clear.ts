import { thinnest } from "../instrument/wall.ts";
import { dimensionOf } from "../order/spec.ts";
import type { Check } from "./check.ts";

/** Whether every index pin has enough wood round it: to channels, holes, other pins, back, sides and ends. */
export const pinClear: Check = {
  id: "pin.clear",
  of: ({ spec, instrument: { neckPinWalls } }) => {
    const limit = dimensionOf(spec, "pin.wall");
    const { left: found, between, mend } = thinnest(neckPinWalls);
    const thin = found < limit - 1e-6;
    return {
      ...{ status: thin ? "refuse" : "pass", stake: "spoilage", subject: "neck", found, limit, unit: "mm" },
      why: thin
        ? `the wood between ${between} gives way and the template shifts: ${mend}`
        : `enough wood round every index pin, the least between ${between}`,
      source: `design ${spec.design}, pin.wall (general trade knowledge: default, confirm)`,
      holds: ["neck-plan"],
    };
  },
};
