import { plain } from "../../workshop/guided/fault.ts";
import { type FixtureRule, ofSetUp } from "../guided/fixture-check.ts";
import type { OneOpening } from "./inside-check.ts";

/** The most that bits from these diameters on take off at once in hardwood, mm. */
const most = [
  [25, 9.5],
  [19, 6.4],
  [12.7, 4.8],
  [10, 3.2],
  [6, 1.6],
] as const;

/** How deep the deepest of a recess's passes goes at once, from the depths that are set, and whether the last is the whole depth. Found: that, mm. */
export const depthAPass: FixtureRule<OneOpening> = ofSetUp<OneOpening>(
  "removal",
  {
    ...{ stake: "injury", unit: "mm", limit: 0 },
    source: "published charts for hardwood, of low authority: default, confirm; never over half the diameter",
  },
  ({ cutter: { id, diameter } }, { passes, depth }) => {
    const row = most.find(([from]) => diameter >= from - 1e-6)?.[1] ?? (1.6 * diameter) / 6;
    const limit = Math.min(diameter / 2, row);
    const found = Math.max(0, ...passes.map((set, i) => set - (passes[i - 1] ?? 0)));
    const last = passes.at(-1) ?? 0;
    if (Math.abs(last - depth) > 1e-6)
      return {
        ...{ status: "refuse", found: Math.abs(depth - last), limit: 0 },
        why: `the passes end at ${plain(last)} mm where the recess is ${plain(depth)} deep`,
      };
    const deep = found > limit + 1e-6;
    return {
      ...{ status: deep ? "refuse" : "pass", found, limit },
      why: deep
        ? `${id} would take ${plain(found)} mm at once, over ${plain(limit)}: set ${Math.ceil(depth / limit - 1e-9)} depths`
        : `${passes.length} passes of ${plain(found)} mm where ${id} takes ${plain(limit)} at once; default, confirm`,
    };
  },
);
