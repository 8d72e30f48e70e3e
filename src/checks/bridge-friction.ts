import type { Check } from "./check.ts";

/** The friction that a waxed or pencilled notch has left to give (G: default, confirm). */
const most = 0.2;

/** Whether every string stays where it lies in its notch, by the friction that it asks for. */
export const bridgeFriction: Check = {
  id: "bridge.friction",
  of: ({ forces }) => {
    const found = forces.bridgeLoad.friction;
    const status = found > most ? "attend" : "pass";
    return {
      ...{ status, stake: "spoilage", subject: "bridge", found, limit: most, unit: "" },
      why:
        status === "pass"
          ? "the strings load the bridge squarely enough to stay in their notches"
          : "the strings creep along their notches and take the bridge's top with them: bring the angles on both sides nearer to each other by core.slope or tailpiece.height",
      source: "general trade knowledge, 0.2: default, confirm",
      holds: [],
    };
  },
};
