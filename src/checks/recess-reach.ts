import type { Check } from "./check.ts";
import { filesOf } from "./recess-wall.ts";

/** Whether what leads out of a recess through a wall reaches through it. */
export const recessReach: Check = {
  id: "recess.reach",
  applies: ({ recesses }) => recesses.some(({ out }) => out !== null),
  of: ({ spec, instrument }) => {
    const all = Object.entries(instrument.threadHoles);
    const [id, { through, reach }] = all.reduce((most, one) =>
      one[1].through - one[1].reach > most[1].through - most[1].reach ? one : most,
    );
    const { in: part, holds } = spec.recesses.find((one) => one.id === id)!;
    const refused = through > reach + 1e-6;
    const item = holds.kind === "item" ? holds.item.item : id;
    const by = Math.ceil((through - reach) * 100) / 100;
    return {
      ...{ status: refused ? "refuse" : "pass", stake: "spoilage", subject: part, found: through },
      ...{ limit: reach, unit: "mm" },
      why: refused
        ? `the wall that ${item} goes through is too thick for it: move recess ${id} toward it by ${by} mm or more`
        : `${item} reaches through its wall`,
      source: `hardware.yaml, ${item} (general trade knowledge: default, confirm)`,
      holds: filesOf(part),
    };
  },
};
