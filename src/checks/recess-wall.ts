import type { RecessWall } from "../instrument/recess/walls.ts";
import type { Check } from "./check.ts";
import { leastWall, setBy } from "./least-wall.ts";

/** Whether enough wood is left round recesses and wires' bores: to faces, rim, joint, pins, and to each other. */
export const recessWall: Check = {
  id: "recess.wall",
  applies: ({ recesses }) => recesses.length > 0,
  of: (model) => {
    const { recesses } = model.spec;
    const holds = [...new Set(recesses.flatMap(({ in: part, id }) => [...filesOf(part), `cover-${id}`]))];
    return leastWall({
      ...{ id: "recess.wall", subject: "recesses", holds, ...setBy("recess.wall") },
      walls: ({ instrument }): readonly RecessWall[] => instrument.recessWalls,
      thin: ({ between, mend }) => `the wood between ${between} breaks out: ${mend}`,
      enough: (between) => `enough wood round recesses and bores, the least between ${between}`,
    }).of(model);
  },
};

/** The files that a recess in a part stands in. */
export function filesOf(part: string): string[] {
  return part === "neck" ? ["neck-front", "neck-back"] : [part, `${part}-back`];
}
