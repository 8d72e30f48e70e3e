import { rod } from "../geometry/solid/rod.ts";
import type { Solid } from "../geometry/solid/solid.ts";
import { between, lengthOf, type Vec3 } from "../geometry/solid/vec3.ts";

/**
 * A straight round bore in a part's own axes, mm: the drill's axis from end to end, and the stretches of it that run through the part's wood,
 * as ways along it from its beginning.
 */
export type Drilled = {
  readonly id: string;
  readonly diameter: number;
  readonly from: Vec3;
  readonly to: Vec3;
  readonly wood: readonly (readonly [start: number, end: number])[];
};

/** What a bore takes away, in its part's own axes. */
export function drilledCutter({ from, to, diameter }: Drilled): Solid {
  return rod(from, to, diameter);
}

/** The place so far along a bore's axis, mm. */
export function alongBore({ from, to }: Pick<Drilled, "from" | "to">, way: number): Vec3 {
  const run = between(from, to);
  const share = way / lengthOf(run);
  return { x: from.x + share * run.x, y: from.y + share * run.y, z: from.z + share * run.z };
}
