import { plain } from "../../workshop/guided/fault.ts";
import type { Check } from "../check.ts";
import type { SawnRule } from "./sawn-check.ts";

/**
 * How long a blank is at least that is sawn by hand, mm: fingers stay 100 from the blade on either side (S), and a hand's breadth of 80 holds it (G:
 * default, confirm). And the same for loose work at shaper and router (S).
 */
const least = { bandsaw: 280, spindle: 305 } as const;

/** Whether a blank is long enough to be held with the fingers far from the blade. Found: its length, mm. */
export const sawnSmall: SawnRule = {
  name: "work.small",
  of: ({ blank: { minX, maxX } }) => {
    const found = maxX - minX;
    const small = found < least.bandsaw - 1e-6;
    return {
      ...{ status: small ? "refuse" : "pass", stake: "injury", found, limit: least.bandsaw, unit: "mm" },
      why: small
        ? `a blank ${plain(found)} mm long can't be held with the fingers 100 mm from the blade: leave it ${least.bandsaw} mm or longer, or saw it by hand`
        : `the blank is ${plain(found)} mm long: fingers stay 100 mm from the blade on either side`,
      source:
        "published bandsaw guidance, fingers 100 from the blade; a hand's breadth of 80: default, confirm",
    };
  },
};

/** The parts that are too small to be worked loose at a machine. Found: how many. */
export const smallParts: Check = {
  id: "work.small",
  of: ({ blanks: { small } }) => {
    const loose = small.filter(({ blank }) => blank.length < least.spindle);
    const names = loose.map(({ part }) => part).join(", ");
    return {
      ...{ status: loose.length > 0 ? "attend" : "pass", stake: "injury", subject: "small parts" },
      ...{ found: loose.length, limit: 0, unit: "", holds: [] },
      why:
        loose.length > 0
          ? `${names} are under ${least.spindle} mm long: none of them goes loose to shaper, router or bandsaw; shape them on a strip of ${least.spindle} mm or more and part them off last by hand, or hold them in a fixture`
          : "no part is too small for a machine",
      source: "published shaper guidance: no loose work under 305 mm without a fixture",
    };
  },
};
