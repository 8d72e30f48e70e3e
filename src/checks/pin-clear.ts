import { leastWall, setBy } from "./least-wall.ts";

/** Whether every index pin has enough wood round it: to channels, holes, other pins, back, sides and ends. */
export const pinClear = leastWall({
  ...{ id: "pin.clear", subject: "neck", holds: ["neck-plan"], ...setBy("pin.wall") },
  walls: ({ instrument }) => instrument.neckPinWalls,
  thin: ({ between, mend }) => `the wood between ${between} gives way and the template shifts: ${mend}`,
  enough: (between) => `enough wood round every index pin, the least between ${between}`,
});
