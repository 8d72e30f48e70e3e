import { thinnest } from "../instrument/wall.ts";
import { dimensionOf } from "../order/spec.ts";
import type { Check } from "./check.ts";

/** Whether enough wood is left under and beside the rods' channels, and between two. A neck without rods leaves all its wood. */
export const rodWall: Check = {
  id: "rod.wall",
  of: ({ spec, instrument: { neckRodWalls, neckWood } }) => {
    const limit = dimensionOf(spec, "rod.wall");
    const whole = { left: neckWood.nut.wood, between: "front and back", mend: "leave it" };
    const { left: found, between, mend } = neckRodWalls.length === 0 ? whole : thinnest(neckRodWalls);
    const thin = found < limit - 1e-6;
    return {
      ...{ status: thin ? "refuse" : "pass", stake: "spoilage", subject: "neck", found, limit, unit: "mm" },
      why: thin
        ? `the wood between ${between} splits or is carved through: ${mend}`
        : neckRodWalls.length === 0
          ? "no rods: the whole neck under the board is wood"
          : `enough wood round the rods' channels, the least between ${between}`,
      source: `design ${spec.design}, rod.wall (general trade knowledge: default, confirm)`,
      holds: ["neck-plan"],
    };
  },
};
