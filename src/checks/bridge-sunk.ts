import { leastSunkWall } from "../instrument/bridge/bridge.ts";
import type { Check } from "./check.ts";
import { leastWall } from "./least-wall.ts";

/** Whether enough wood is left round the screws' holes or the pickup's cradle under the bridge. A bridge that stands by itself has none. */
export const bridgeSunk: Check = {
  ...leastWall({
    ...{ id: "wall.bridge-foot", subject: "core", holds: ["bridge-place"] },
    walls: ({ instrument }) => instrument.bridgeSunkWalls,
    limit: () => leastSunkWall,
    from: () => "general trade knowledge: default, confirm",
    thin: ({ between, mend }) => `the wood between ${between} breaks out: ${mend}`,
    enough: (between) => `enough wood round what is sunk under the bridge, the least between ${between}`,
  }),
  applies: ({ bridgeFoot }) => bridgeFoot.kind !== "standing",
};
