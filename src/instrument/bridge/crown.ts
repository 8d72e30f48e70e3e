import { fitCircle } from "../../geometry/fit-circle.ts";
import { step } from "../../step/step.ts";
import { type CoreFrame, intoCore } from "../core/frame.ts";

/** String centres where they meet the bridge, mm, highest string first, and the frame that the bridge stands in. */
export type CrownInput = {
  readonly stringLength: number;
  readonly across: readonly number[];
  readonly heights: readonly number[];
  readonly core: CoreFrame;
};

/**
 * The crown: a circle in the plane across the instrument at the string length, mm. `top` is its highest point over z = 0,
 * `height` the same square from the core's front.
 */
export type Crown = {
  readonly centre: { readonly x: number; readonly y: number };
  readonly radius: number;
  readonly top: number;
  readonly height: number;
};

/**
 * The crown as the least-squares circle through the string centres, its own centre free; the bridge's tilt is ignored, so
 * all strings meet it at the string length. (The circle's plane has y as its first axis and z as its second.)
 */
export const bridgeCrown = step(
  "bridge.crown",
  1,
  ({ stringLength, across, heights, core }: CrownInput): Crown => {
    const fit = fitCircle(across.map((x, i) => ({ x, y: heights[i]! })));
    if (fit.kind !== "ok") throw new RangeError(`no crown through the strings: ${fit.kind}`);
    const { centre, radius } = fit;
    const top = centre.y + radius;
    return { centre, radius, top, height: intoCore(core, { x: stringLength, z: top }).z };
  },
);
