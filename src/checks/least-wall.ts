import { thinnest, type Wall } from "../instrument/wall.ts";
import type { Model } from "../workshop/model.ts";
import type { Check, Finding } from "./check.ts";

/** What a check of walls asks and says: the walls in a model, the least one wanted (mm), and its words for either outcome. */
export type LeastWall = Pick<Finding, "subject" | "holds"> & {
  readonly id: string;
  readonly walls: (model: Model) => readonly Wall[];
  readonly limit: (model: Model) => number;
  /** Where the limit is from; that it is a default to confirm is added. */
  readonly from: (model: Model) => string;
  readonly thin: (wall: Pick<Wall, "between" | "mend">) => string;
  readonly enough: (between: string) => string;
};

/** A check that refuses where the least of some walls is under its limit, but for the last digit of a sum. */
export function leastWall({ id, subject, holds, walls, limit, from, thin, enough }: LeastWall): Check {
  return {
    id,
    of: (model) => {
      const wanted = limit(model);
      const { left: found, between, mend } = thinnest(walls(model));
      const refused = found < wanted - 1e-6;
      return {
        ...{ status: refused ? "refuse" : "pass", stake: "spoilage", subject, found },
        ...{ limit: wanted, unit: "mm" },
        why: refused ? thin({ between, mend }) : enough(between),
        ...{ source: from(model), holds },
      };
    },
  };
}

/** A limit that a design sets, and where that is from. */
export function setBy(id: string): Pick<LeastWall, "limit" | "from"> {
  return {
    limit: ({ spec }) => spec.values[id]!.value,
    from: ({ spec }) => `design ${spec.design}, ${id} (general trade knowledge: default, confirm)`,
  };
}
