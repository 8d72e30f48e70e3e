import type { FitMeasured } from "../../workshop/assembly/assembled.ts";
import { heldBy, namesOf, type SolidCheck, worst } from "./solid-check.ts";

/** How the checks of joints tell what they found: a number of each fit, the most that it may be, and words for a joint over it. */
type Joined = {
  readonly id: string;
  readonly unit: "mm" | "deg";
  readonly limit: number;
  readonly of: (fit: FitMeasured) => number;
  readonly over: (names: string) => string;
  readonly within: string;
};

/** A check of what should touch, by one number of each joint, which it refuses over its limit. */
function joined({ id, unit, limit, of, over, within }: Joined): SolidCheck {
  return {
    id,
    of: (fits) => {
      const fit = worst(
        fits.filter((one) => one.fit.kind !== "clear"),
        of,
      );
      if (fit === undefined) throw new RangeError("an instrument without joints");
      const found = of(fit);
      const refused = found > limit;
      return {
        ...{
          status: refused ? "refuse" : "pass",
          stake: "spoilage",
          subject: "assembly",
          found,
          limit,
          unit,
        },
        why: refused ? over(namesOf(fit)) : `${within}, the most of it at ${namesOf(fit)}`,
        source: "measured on the solids as they are written",
        holds: refused ? heldBy(fit) : ["assembly"],
      };
    },
  };
}

/** A joint that is in contact nowhere has no area to share its volume out over: then a square millimetre. */
const leastArea = 1;

/** Whether parts that should touch don't reach into each other: the volume in both, shared out over the faces that lie on each other. */
export const overlapping = joined({
  ...{ id: "assembly.overlap", unit: "mm", limit: 0.001 },
  of: ({ interference, facing }) => interference / Math.max(leastArea, facing?.area ?? 0),
  over: (names) => `${names} stand in each other: one of them is drawn too large or in the wrong place`,
  within: "parts that touch don't reach into each other",
});

/** Whether parts that should touch do, and what is let in has no more room than its clearance. */
export const gaping = joined({
  ...{ id: "assembly.gap", unit: "mm", limit: 0.01 },
  of: ({ fit, gap }) => (fit.kind === "let-in" && !fit.floor ? Math.max(0, gap - fit.clearance) : gap),
  over: (names) => `${names} don't reach each other`,
  within: "parts that should touch do",
});

/** Whether faces that lie on each other do so all over. */
export const flush = joined({
  ...{ id: "assembly.flush", unit: "mm", limit: 0.01 },
  of: ({ facing }) => facing?.apart ?? 0,
  over: (names) => `the faces of ${names} lie on each other in places only`,
  within: "faces that are joined lie in one plane",
});

/** Whether faces that lie on each other have one direction. */
export const parallel = joined({
  ...{ id: "assembly.angle", unit: "deg", limit: 0.01 },
  of: ({ facing }) => facing?.angle ?? 0,
  over: (names) => `the faces of ${names} stand at an angle to each other`,
  within: "faces that are joined have one direction",
});
