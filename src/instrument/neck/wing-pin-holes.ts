import { fromFrame } from "../../geometry/solid/frame.ts";
import type { Vec3 } from "../../geometry/solid/vec3.ts";
import { type Side, sides } from "../../order/side.ts";
import type { CoreFrame } from "../core/frame.ts";
import { coreAxes } from "../core/from-core.ts";
import type { Wings } from "../wing/wings.ts";
import type { Hole } from "./solid.ts";

/** The hole of a wing's index pin in the core's side: whose it is, and the hole among the instrument's axes, mm. */
export type WingPinHole = { readonly side: Side; readonly id: string; readonly hole: Hole };

/**
 * The holes of the wings' index pins in the core's sides, square to the joint faces; none without wings. `pin` gives a size of a wing's pins by
 * its name.
 */
export function wingPinHoles(
  wings: Wings["wings"],
  core: CoreFrame,
  pin: (side: Side, name: "pin" | "pin.depth") => number,
): WingPinHole[] {
  if (wings === null) return [];
  const axes = coreAxes(core);
  const placed = ({ x, y, z }: Vec3) => fromFrame(axes, x, y, z);
  const turned = ({ x, y, z }: Vec3) => fromFrame({ ...axes, origin: { x: 0, y: 0, z: 0 } }, x, y, z);
  return sides.flatMap((side) => {
    const { face, pins } = wings[side].joint;
    const [diameter, depth] = [pin(side, "pin"), pin(side, "pin.depth")];
    return pins.map(({ id, at }): WingPinHole => {
      const hole = { at: placed(at), out: turned(face.w), diameter, bottom: diameter, depth };
      return { side, id, hole };
    });
  });
}
