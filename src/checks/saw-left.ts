import { dimensionOf } from "../order/spec.ts";
import type { Check } from "./check.ts";

/** Whether the two-way sawn blank has enough wood left outside the finished neck everywhere. */
export const sawLeft: Check = {
  id: "saw.left",
  of: ({ spec, sawing: { left } }) => {
    const limit = dimensionOf(spec, "saw.least");
    const views =
      left === "no-line" ? [] : (["plan", "side"] as const).map((view) => ({ view, ...left[view] }));
    const [least] = views.toSorted((a, b) => a.least - b.least);
    const found = least?.least ?? 0;
    const thin = found < limit - 1e-6;
    const where =
      least === undefined
        ? "no saw line leads round the neck"
        : `the saw line of the ${least.view} is too near the neck ${Math.round(least.at.x)} mm from the nut`;
    return {
      ...{ status: thin ? "refuse" : "pass", stake: "spoilage", subject: "neck", found, limit, unit: "mm" },
      why: thin
        ? `${where}: raise saw.allowance or widen the blank`
        : "enough wood is left for the shaper everywhere",
      source: `design ${spec.design}, saw.least; an allowance of 1.6, 2 or 3 is published`,
      holds: ["neck-saw-plan", "neck-saw-side"],
    };
  },
};
