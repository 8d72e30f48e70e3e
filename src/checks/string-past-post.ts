import { postGap } from "../instrument/head/string-paths.ts";
import { leastWall } from "./least-wall.ts";

/** Whether every string runs clear of the posts of others, or of their holes on a bare head: nearer, and it rubs or buzzes there. */
export const stringPastPost = leastWall({
  ...{ id: "tuner.past-post", subject: "head", holds: ["neck-plan", "head-face"] },
  limit: () => postGap,
  from: () => "general trade knowledge: default, confirm",
  walls: ({ instrument }) => instrument.stringPaths.past,
  thin: ({ between, mend }) => `too little room between ${between}, where it rubs: ${mend}`,
  enough: (between) => `every string runs clear of the others' posts, the nearest are ${between}`,
});
