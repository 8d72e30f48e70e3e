import type { Frame } from "../../geometry/solid/frame.ts";
import type { CoreFrame, SidePoint } from "./frame.ts";

/** The core frame's own axes in the instrument's: x' along the core's front to the tail, y to the treble side, z' square out of it. */
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

/** A place of the core frame, seen from the side, in the instrument's axes; mm. */
export function fromCore(core: CoreFrame, { x, z }: SidePoint): SidePoint {
  const { origin, u, w } = coreAxes(core);
  return { x: origin.x + x * u.x + z * w.x, z: origin.z + x * u.z + z * w.z };
}
