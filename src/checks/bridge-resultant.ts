import { dimensionOf } from "../order/spec.ts";
import type { Check } from "./check.ts";

/** How far inside the foot's edges the resultant has to meet the core, mm (G: default, confirm). */
const inside = 0.8;

/** Whether a bridge that stands by itself stays on its foot: the strings' resultant meets the core well inside it. */
export const bridgeResultant: Check = {
  id: "bridge.resultant",
  applies: ({ bridgeFoot }) => bridgeFoot.kind !== "saddle",
  of: ({ spec, forces }) => {
    const found = forces.resultant!;
    const half = dimensionOf(spec, "bridge.foot.thickness") / 2;
    const most = half - inside;
    const status = Math.abs(found) <= most ? "pass" : Math.abs(found) <= half ? "attend" : "refuse";
    const limit = Math.sign(found) * (status === "refuse" ? half : most);
    const [way, move] = found > 0 ? ["nut", "raise"] : ["tail", "lower"];
    return {
      ...{ status, stake: "spoilage", subject: "bridge", found, limit, unit: "mm" },
      why:
        status === "pass"
          ? "the strings press the foot flat on the core"
          : `the strings tip the bridge toward the ${way}: ${move} bridge.tilt or thicken bridge.foot.thickness`,
      source: "general trade knowledge, 0.8 inside the foot: default, confirm",
      holds: ["bridge"],
    };
  },
};
