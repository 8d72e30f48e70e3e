import { thinnest } from "../instrument/wall.ts";
import { dimensionOf } from "../order/spec.ts";
import type { Check } from "./check.ts";

/** Whether enough wood is left between the tuners' holes and from them to the head's edges. */
export const headWall: Check = {
  id: "head.wall",
  of: ({ spec, instrument: { holeWalls } }) => {
    const limit = dimensionOf(spec, "head.wall");
    const { left: found, between, mend } = thinnest(holeWalls);
    const thin = found < limit - 1e-6;
    return {
      ...{ status: thin ? "refuse" : "pass", stake: "spoilage", subject: "head", found, limit, unit: "mm" },
      why: thin
        ? `the wood between ${between} splits: ${mend}`
        : `enough wood round every hole of the head, the least between ${between}`,
      source: `design ${spec.design}, head.wall (general trade knowledge: default, confirm)`,
      holds: ["neck-plan", "head-face"],
    };
  },
};
