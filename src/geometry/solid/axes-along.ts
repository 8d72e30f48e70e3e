import type { Frame } from "./frame.ts";
import { cross, unit, type Vec3 } from "./vec3.ts";

/**
 * Right-handed axes with w along a direction of any length, and u square to both that and `aside`, any direction that lies nowhere near it. A `direction` along
 * `aside` gives axes that are no numbers.
 */
export function axesAlong(direction: Vec3, aside: Vec3): Pick<Frame, "u" | "v" | "w"> {
  const w = unit(direction);
  const u = unit(cross(aside, w));
  return { u, v: cross(w, u), w };
}
