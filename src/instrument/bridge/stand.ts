import type { Path } from "../../geometry/path.ts";
import { step } from "../../step/step.ts";
import { type CoreFrame, intoCore } from "../core/frame.ts";

/**
 * What a bridge's place follows from: lengths in mm, `tilt` in degrees. `crownTop` is the crown's highest place over z = 0 at
 * the string length; `foot` and `top` are thicknesses along the core.
 */
export type StandInput = {
  readonly stringLength: number;
  readonly core: CoreFrame;
  readonly crownTop: number;
  readonly tilt: number;
  readonly foot: number;
  readonly top: number;
};

/**
 * How the bridge stands on the core's front, in the core frame; mm and degrees. `contact` is the x' of the strings' contact at the
 * crown's top and `height` how high that is; `tail`, `middle` and `nut` are the x' of the foot's tail edge, middle and nut edge.
 */
export type BridgeStand = {
  readonly tilt: number;
  readonly height: number;
  readonly contact: number;
  readonly tail: number;
  readonly middle: number;
  readonly nut: number;
  readonly foot: number;
  readonly top: number;
};

/**
 * The bridge's place: its tail-side face flat and leaning by the tilt, so that the middle of the crown's thickness comes at the
 * string length. A contact h over the front stands h tan(tilt) + (foot - top) / 2 behind the foot's middle.
 */
export const bridgeStand = step("bridge.stand", 1, (given: StandInput): BridgeStand => {
  const { stringLength, core, crownTop, tilt, foot, top } = given;
  const { x: contact, z: height } = intoCore(core, { x: stringLength, z: crownTop });
  const tail = contact + top / 2 - height * Math.tan((tilt * Math.PI) / 180);
  return { tilt, height, contact, tail, middle: tail - foot / 2, nut: tail - foot, foot, top };
});

/** The bridge's sides at z' over the core's front: the x' of its flat face and of the face toward the nut, mm. */
export function sidesAt({ tilt, height, tail, foot, top }: BridgeStand, z: number) {
  const flat = tail + z * Math.tan((tilt * Math.PI) / 180);
  return { flat, nut: flat - foot - ((top - foot) * z) / height };
}

/**
 * The bridge from the side between two heights over the core's front, counter-clockwise: x' first, z' second, mm. Both faces are led on
 * straight below the foot and above the crown.
 */
export function sideBetween(stand: BridgeStand, low: number, high: number): Path {
  const [under, over] = [sidesAt(stand, low), sidesAt(stand, high)];
  return {
    closed: true,
    points: [
      { x: under.nut, y: low, bulge: 0 },
      { x: under.flat, y: low, bulge: 0 },
      { x: over.flat, y: high, bulge: 0 },
      { x: over.nut, y: high, bulge: 0 },
    ],
  };
}
