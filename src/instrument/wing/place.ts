import { type Frame, fromFrame } from "../../geometry/solid/frame.ts";
import type { Side } from "../../order/side.ts";
import { step } from "../../step/step.ts";
import type { CoreFrame } from "../core/frame.ts";
import { coreAxes } from "../core/from-core.ts";
import { type CoreWidth, coreHalf } from "../core/width.ts";
import { type JointCut, jointCut } from "./angles.ts";
import { type JointSide, jointSide, sign, type WingAngles, wingFrame } from "./frame.ts";

/** Where a wing stands on its core, mm and degrees: `start` along the core's front; `core.width` holds at x = `core.at` and grows by `core.taper` a side. */
export type WingPlaceInput = {
  readonly side: Side;
  readonly start: number;
  readonly drop: number;
  readonly angles: WingAngles;
  readonly core: CoreFrame & CoreWidth;
};

/**
 * A wing on its core, all in the core frame: its own axes, whose origin is the head end of its joint line, the core's side
 * there, and how its joint edge is cut. `x` is that origin among the instrument's axes, from the nut.
 */
export type WingPlace = {
  readonly frame: Frame;
  readonly joint: JointSide;
  readonly cut: JointCut;
  readonly x: number;
};

/**
 * The joint line's head end lies on the core's side, `drop` under its front; the wing is turned there by its angles. What is worked out
 * from this takes the same input and works it out again: as another step's input its directions would be rounded.
 */
export function placeOfWing({ side, start, drop, angles, core }: WingPlaceInput): WingPlace {
  const { x } = fromFrame(coreAxes(core), start, 0, -drop);
  const half = coreHalf(core, x);
  const joint = jointSide(side, core.taper, core.slope);
  const frame = wingFrame(side, angles, joint, { x: start, y: sign(side) * half, z: -drop });
  return { frame, joint, cut: jointCut(side, frame, joint), x };
}

/** Where a wing stands on its core. */
export const wingPlace = step("wing.place", 1, placeOfWing);
