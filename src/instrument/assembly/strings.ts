import { rod } from "../../geometry/solid/rod.ts";
import type { Solid } from "../../geometry/solid/solid.ts";
import type { Vec3 } from "../../geometry/solid/vec3.ts";
import { step } from "../../step/step.ts";

/** A string's diameter and the places that its centre passes, from its post to its exit from the tailpiece, mm. */
export type StrungInput = { readonly diameter: number; readonly through: readonly Vec3[] };

/** A string as round rods from place to place. */
export const stringSolid = step("assembly.string", 1, ({ diameter, through }: StrungInput): Solid => {
  const rods = through.slice(1).map((to, i) => rod(through[i]!, to, diameter));
  return { kind: "union", solids: rods };
});
