import { jigsOf } from "../workshop/jigs/jigs.ts";
import type { Check } from "./check.ts";

/** Whether the shop can print the jigs. Found: how many of them the printer's bed holds, whole or in pieces; limit: how many there are. */
export const printedJigs: Check = {
  id: "printed.bed",
  of: (model) => {
    const made = jigsOf(model);
    const usual = { subject: "jigs", stake: "spoilage", unit: "", holds: [] } as const;
    const source = "the shop's printer and its bed";
    if (made.kind === "none") {
      const why = "the shop has no printer whose bed is stated along x, y and z: no jigs are made";
      return { ...usual, source, status: "attend", found: 0, limit: 1, why };
    }
    const { x, y, z } = made.rules.bed;
    const missing = made.jigs.filter(({ fits }) => !fits);
    const [first] = missing;
    return {
      ...{ ...usual, source, found: made.jigs.length - missing.length, limit: made.jigs.length },
      status: first === undefined ? "pass" : "attend",
      why:
        first === undefined
          ? `every jig goes onto the bed of ${made.rules.printer}, ${x} by ${y} by ${z}`
          : `${missing.map(({ name }) => name).join(", ")} left out: ${first.name} lies ${first.size.x.toFixed(0)} by ${first.size.y.toFixed(0)} and stands ${first.size.z.toFixed(0)} high, the bed of ${made.rules.printer} is ${x} by ${y} by ${z}`,
    };
  },
};
