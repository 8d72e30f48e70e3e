import { leastWall, setBy } from "./least-wall.ts";

/** Whether enough wood is left between the tailpiece's holes, from them to its edges, and round its posts in the core. */
export const tailpieceWall = leastWall({
  ...{ id: "tailpiece.wall", subject: "tailpiece", holds: ["tailpiece"], ...setBy("tailpiece.wall") },
  walls: ({ instrument }) => instrument.tailpieceWalls,
  thin: ({ between, mend }) => `the wood between ${between} splits under the strings' pull: ${mend}`,
  enough: (between) => `enough wood round every hole of the tailpiece, the least between ${between}`,
});
