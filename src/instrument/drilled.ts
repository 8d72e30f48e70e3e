import { circle } from "../geometry/circle.ts";
import type { Frame } from "../geometry/solid/frame.ts";
import type { Solid } from "../geometry/solid/solid.ts";
import { between, cross, lengthOf, unit, type Vec3 } from "../geometry/solid/vec3.ts";

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
  const length = lengthOf(between(from, to));
  return {
    kind: "place",
    solid: {
      kind: "extrude",
      outlines: [{ outer: circle({ x: 0, y: 0 }, diameter / 2), holes: [] }],
      height: length,
    },
    frame: alongAxis(from, to),
  };
}

/** The place so far along a bore's axis, mm. */
export function alongBore({ from, to }: Pick<Drilled, "from" | "to">, way: number): Vec3 {
  const run = between(from, to);
  const share = way / lengthOf(run);
  return { x: from.x + share * run.x, y: from.y + share * run.y, z: from.z + share * run.z };
}

function alongAxis(from: Vec3, to: Vec3): Frame {
  const w = unit(between(from, to));
  // Any direction across will do; one that lies nowhere near the axis.
  const other = Math.abs(w.z) < 0.7 ? { x: 0, y: 0, z: 1 } : { x: 1, y: 0, z: 0 };
  const u = unit(cross(other, w));
  return { origin: from, u, v: cross(w, u), w };
}
