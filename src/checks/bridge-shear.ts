import type { Check } from "./check.ts";

/** What a wood screw of mild steel may bear in shear, with a good margin to its yield, MPa (G: default, confirm). */
const most = 60;

/** Whether a screwed saddle's screws bear the strings' lean and side pull, with no help from friction. */
export const bridgeShear: Check = {
  id: "bridge.shear",
  applies: ({ bridgeFoot }) => bridgeFoot.kind === "saddle" && bridgeFoot.screws.length > 0,
  of: ({ forces }) => {
    const found = forces.screwShear!;
    const status = found > most ? "attend" : "pass";
    return {
      ...{ status, stake: "spoilage", subject: "bridge", found, limit: most, unit: "MPa" },
      why:
        status === "pass"
          ? "the screws hold the saddle with a good margin"
          : "the screws of the saddle may give way: take thicker ones or more of them",
      source: "general trade knowledge, 60 MPa for mild steel: default, confirm",
      holds: [],
    };
  },
};
