import type { Wall } from "../instrument/wall.ts";
import type { Model } from "../workshop/model.ts";
import { leastWall, setBy } from "./least-wall.ts";

/** Stands for all its wood in a neck without rods. */
const noRods = "front and back";

/** Whether enough wood is left under and beside the rods' channels, and between two. A neck without rods leaves all its wood. */
export const rodWall = leastWall({
  ...{ id: "rod.wall", subject: "neck", holds: ["neck-plan"], ...setBy("rod.wall") },
  walls,
  thin: ({ between, mend }) => `the wood between ${between} splits or is carved through: ${mend}`,
  enough: (between) =>
    between === noRods
      ? "no rods: the whole neck under the board is wood"
      : `enough wood round the rods' channels, the least between ${between}`,
});

function walls({ instrument: { neckRodWalls, neckWood } }: Model): readonly Wall[] {
  const whole = { left: neckWood.nut.wood, between: noRods, ids: [], mend: "leave it" };
  return neckRodWalls.length === 0 ? [whole] : neckRodWalls;
}
