import { leastSunkWall } from "../instrument/bridge/bridge.ts";
import { dimensionOf } from "../order/spec.ts";
import type { Check } from "./check.ts";
import { leastWall } from "./least-wall.ts";

/** Whether enough wood is left under what is sunk into the core, and between that and the wings' pins, which come from the sides. */
export const coreJoinery: Check = {
  ...leastWall({
    ...{ id: "wall.core", subject: "core", holds: ["neck-plan"] },
    walls: ({ instrument }) => instrument.joineryWalls,
    limit: () => leastSunkWall,
    from: () => "general trade knowledge: default, confirm",
    thin: ({ between, mend }) => `the wood between ${between} breaks out: ${mend}`,
    enough: (between) => `enough wood round what is sunk into the core, the least between ${between}`,
  }),
  applies: (spec) =>
    spec.tailpieceFace.holes.length > 0 ||
    spec.bridgeFoot.kind !== "standing" ||
    (spec.wings !== null && dimensionOf(spec, "rod.count") > 0),
};
