import type { Check } from "./check.ts";

const source = "general trade knowledge, 6 to 15 seen from the side and 8 at most in plan: default, confirm";

/** Whether every string turns enough over the nut to stay in its slot, and not so much that it hangs there. */
export const bendOverNut: Check = {
  id: "nut.bend",
  of: ({ instrument }) => {
    const bends = instrument.tuners.tuners.map(({ bend }) => bend);
    const [low, high] = [Math.min(...bends), Math.max(...bends)];
    const [least, most] = [6, 15];
    const shallow = low < least;
    const status = shallow || high > most ? "attend" : "pass";
    const why = shallow
      ? "a string hardly presses into its slot and may buzz: raise head.angle or lower tuner.height"
      : high > most
        ? "a string hangs in its slot when it is tuned: lower head.angle or raise tuner.height"
        : "every string presses into its slot";
    const [found, limit] = shallow ? [low, least] : [high, most];
    return {
      ...{ status, stake: "spoilage", subject: "head", found, limit, unit: "deg" },
      why,
      source,
      holds: [],
    };
  },
};

/** Whether every string runs to its post with little enough turn in plan. */
export const splayOverNut: Check = {
  id: "nut.splay",
  of: ({ instrument }) => {
    const found = Math.max(...instrument.tuners.tuners.map(({ splay }) => Math.abs(splay)));
    const limit = 8;
    return {
      ...{
        status: found > limit ? "attend" : "pass",
        stake: "spoilage",
        subject: "head",
        found,
        limit,
        unit: "deg",
      },
      why:
        found > limit
          ? "a string saws at the side of its slot: lower head.column"
          : "the strings run on nearly straight",
      source,
      holds: [],
    };
  },
};
