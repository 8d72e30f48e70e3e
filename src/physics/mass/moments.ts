import { type Frame, fromFrame } from "../../geometry/solid/frame.ts";
import type { SolidMoments } from "../../geometry/solid/slices.ts";
import type { Vec3 } from "../../geometry/solid/vec3.ts";

/** How much of space something takes, mm³, and where its middle is, mm. */
export type Measured = { readonly volume: number; readonly centre: Vec3 };

/** Volume and middle from a solid's moments; of nothing the middle is no number. */
export function measuredOf({ volume, x, y, z }: SolidMoments): Measured {
  return { volume, centre: { x: x / volume, y: y / volume, z: z / volume } };
}

/** The moments of so much at one place. */
export function momentsAt(volume: number, { x, y, z }: Vec3): SolidMoments {
  return { volume, x: volume * x, y: volume * y, z: volume * z };
}

/** The moments of all of these together; those that are cut away are given by `less`. */
export function together(moments: readonly SolidMoments[], less: readonly SolidMoments[] = []): SolidMoments {
  const sum = (key: keyof SolidMoments) =>
    moments.reduce((all, one) => all + one[key], 0) - less.reduce((all, one) => all + one[key], 0);
  return { volume: sum("volume"), x: sum("x"), y: sum("y"), z: sum("z") };
}

/** What was measured in a frame's own axes, in the axes that the frame is given in. */
export function placed(frame: Frame, { volume, centre }: Measured): Measured {
  return { volume, centre: fromFrame(frame, centre.x, centre.y, centre.z) };
}
