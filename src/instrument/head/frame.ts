import type { SidePoint } from "../core/frame.ts";

/** How the head's face lies: it begins at the nut's head edge, so thick from x = 0 (mm), and falls at `angle` degrees. */
export type HeadFrame = { readonly nutThickness: number; readonly angle: number };

/** A place of the head in the instrument's axes: so far from the nut along its face, so far square out of it; mm. */
export function onHead({ nutThickness, angle }: HeadFrame, along: number, out: number): SidePoint {
  const tilt = (angle * Math.PI) / 180;
  return {
    x: -nutThickness - along * Math.cos(tilt) - out * Math.sin(tilt),
    z: -along * Math.sin(tilt) + out * Math.cos(tilt),
  };
}
