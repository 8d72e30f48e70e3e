import { dimensionOf } from "../order/spec.ts";
import type { Check } from "./check.ts";
import { leastWall, setBy } from "./least-wall.ts";

/** Whether enough wood is left round what rests' mounts and screws sink into a part's front or back. */
export const restWall: Check = {
  id: "rest.wall",
  applies: ({ rests }) => rests.mounts.length > 0 || rests.chin?.hold === "screws",
  of: ({ spec, instrument }) => {
    const walls = instrument.mountWalls.map((wall) => {
      const wanted = dimensionOf(spec, wall.least);
      return { ...wall, wanted, short: wanted - wall.left };
    });
    const worst = walls.reduce((most, wall) => (wall.short > most.short ? wall : most));
    const refused = worst.short > 1e-6;
    return {
      ...{ status: refused ? "refuse" : "pass", stake: "spoilage", subject: worst.part },
      ...{ found: worst.left, limit: worst.wanted, unit: "mm" },
      why: refused
        ? `the wood between ${worst.between} breaks out: ${worst.mend}`
        : `enough wood round the rests' mounts, the nearest to its limit between ${worst.between}`,
      source: `design ${spec.design}, ${worst.least} (general trade knowledge: default, confirm)`,
      holds: [...new Set(walls.map(({ part }) => (part === "neck" ? "neck-plan" : part)))],
    };
  },
};

/** Whether enough wood is left round the endpin's bore in the core's tail. */
export const endpinWall: Check = {
  applies: ({ rests }) => rests.endpin,
  ...leastWall({
    ...{ id: "endpin.wall", subject: "neck", holds: ["neck-plan", "neck-side"], ...setBy("endpin.wall") },
    walls: ({ instrument }) => instrument.endpin!.walls,
    thin: ({ between, mend }) => `the wood between ${between} splits under the weight: ${mend}`,
    enough: (between) => `enough wood round the endpin's bore, the least between ${between}`,
  }),
};
