import type { Frame } from "../../geometry/solid/frame.ts";
import type { CoreFrame } from "./frame.ts";

/** The core's frame as the axes of a solid: u along its front toward the tail, v to the treble side, w square out of it. */
export function coreAxes({ start, drop, slope }: CoreFrame): Frame {
  const angle = (slope * Math.PI) / 180;
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
  return {
    origin: { x: start, y: 0, z: -drop },
    u: { x: cos, y: 0, z: -sin },
    v: { x: 0, y: 1, z: 0 },
    w: { x: sin, y: 0, z: cos },
  };
}
