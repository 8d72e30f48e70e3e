import type { Vec3 } from "../../geometry/solid/vec3.ts";
import { floorOf, opens } from "./heights.ts";
import type { MadeRecess } from "./recess.ts";

/** Where the middle of what lies in a recess is, on its floor, in the own axes of a part so thick; mm. */
export function heldAt(recess: MadeRecess, depth: number, thickness: number): Vec3 {
  const z = floorOf(recess, thickness) + (opens(recess) * depth) / 2;
  return { x: recess.at.x, y: recess.at.y, z };
}
