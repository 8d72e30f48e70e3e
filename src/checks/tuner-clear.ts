import { leastWall, setBy } from "./least-wall.ts";

/** Whether fingers pass between any two buttons; on a bare head, whether the strings' ends keep from each other. */
export const tunerClear = leastWall({
  ...{ id: "tuner.clear", subject: "head", holds: ["neck-plan", "head-face"] },
  ...setBy("tuner.button.clear"),
  walls: ({ instrument }) => instrument.buttonGaps,
  thin: ({ between, mend }) => `too little room between ${between}: ${mend}`,
  enough: (between) => `room all round, the least between ${between}`,
});
