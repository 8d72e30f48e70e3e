import { thinnest } from "../instrument/wall.ts";
import type { Check } from "./check.ts";

/** Least gap between a string and another's post, mm (G: default, confirm): nearer, and it rubs or buzzes there. */
const limit = 1;

/** Whether every string runs clear of the posts of others, or of their holes on a bare head. */
export const stringPastPost: Check = {
  id: "tuner.past-post",
  of: ({ instrument: { stringPaths } }) => {
    const { left: found, between, mend } = thinnest(stringPaths.past);
    const near = found < limit - 1e-6;
    return {
      ...{ status: near ? "refuse" : "pass", stake: "spoilage", subject: "head", found, limit, unit: "mm" },
      why: near
        ? `too little room between ${between}, where it rubs: ${mend}`
        : `every string runs clear of the others' posts, the nearest are ${between}`,
      source: "general trade knowledge: default, confirm",
      holds: ["neck-plan", "head-face"],
    };
  },
};
