import type { Frame } from "../../geometry/solid/frame.ts";
import type { CoreFrame } from "./frame.ts";

/** The core frame among the instrument's axes: x' along the core's front toward the tail, y' = y, z' square out of it; mm. */
export function coreAxes({ start, drop, slope }: CoreFrame): Frame {
  const angle = (slope * Math.PI) / 180;
  const [c, s] = [Math.cos(angle), Math.sin(angle)];
  return {
    origin: { x: start, y: 0, z: -drop },
    u: { x: c, y: 0, z: -s },
    v: { x: 0, y: 1, z: 0 },
    w: { x: s, y: 0, z: c },
  };
}
