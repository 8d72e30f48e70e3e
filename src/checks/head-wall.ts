import { leastWall, setBy } from "./least-wall.ts";

/** Whether enough wood is left between the tuners' holes and from them to the head's edges. */
export const headWall = leastWall({
  ...{ id: "head.wall", subject: "head", holds: ["neck-plan", "head-face"], ...setBy("head.wall") },
  walls: ({ instrument }) => instrument.holeWalls,
  thin: ({ between, mend }) => `the wood between ${between} splits: ${mend}`,
  enough: (between) => `enough wood round every hole of the head, the least between ${between}`,
});
