import type { Vec3 } from "../../geometry/solid/vec3.ts";
import { type CoreFrame, frontAt } from "./frame.ts";
import { type CoreWidth, coreHalf } from "./width.ts";

/** The core's front, mm and degrees: its frame, where it ends, its width at x = `at`, and its taper a side. */
export type CoreFront = CoreWidth & { readonly core: CoreFrame; readonly end: number };

/** The four corners of the core's front from its start to its end, as if its edges ran straight all along. */
export function coreFront({ core, end, width, at, taper }: CoreFront): Vec3[] {
  const corner = (x: number, side: 1 | -1): Vec3 => {
    const half = coreHalf({ width, at, taper }, x);
    return { x, y: side * half, z: frontAt(core, x) };
  };
  return [corner(core.start, -1), corner(end, -1), corner(end, 1), corner(core.start, 1)];
}
