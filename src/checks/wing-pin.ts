import { thinnest } from "../instrument/wall.ts";
import { sides } from "../order/side.ts";
import type { Check } from "./check.ts";

/** Whether enough wood is left round the holes of the wings' pins, in wings and core. */
export const wingPin: Check = {
  id: "wing.pin",
  applies: ({ wings }) => wings !== null,
  of: ({ spec, instrument }) => {
    const walls = sides.flatMap((side) => {
      const wanted = spec.values[`wing.${side}.pin.wall`]!.value;
      return instrument.wings![side].pinWalls.map((wall) => ({
        ...wall,
        left: wall.left - wanted,
        wanted,
        side,
      }));
    });
    const { left, between, mend, wanted, side } = thinnest(walls) as (typeof walls)[number];
    const refused = left < -1e-6;
    return {
      ...{ status: refused ? "refuse" : "pass", stake: "spoilage", subject: `wing-${side}` },
      ...{ found: left + wanted, limit: wanted, unit: "mm" },
      why: refused
        ? `the wood between ${between} splits: ${mend}`
        : `enough wood round the wings' pins, the least between ${between}`,
      source: `design ${spec.design}, wing.${side}.pin.wall (general trade knowledge: default, confirm)`,
      holds: sides.flatMap((one) => [`wing-${one}`, `joint-${one}`]),
    };
  },
};
