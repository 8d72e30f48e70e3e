import { circle } from "../../geometry/circle.ts";
import type { Frame } from "../../geometry/solid/frame.ts";
import type { Solid } from "../../geometry/solid/solid.ts";
import { between, cross, type Vec3 } from "../../geometry/solid/vec3.ts";
import { step } from "../../step/step.ts";

/** A string's diameter and the places that its centre passes, from its post to its exit from the tailpiece, mm. */
export type StrungInput = { readonly diameter: number; readonly through: readonly Vec3[] };

/** A string as round rods from place to place. */
export const stringSolid = step("assembly.string", 1, ({ diameter, through }: StrungInput): Solid => {
  const rods = through.slice(1).map((to, i) => rod(through[i]!, to, diameter / 2));
  return { kind: "union", solids: rods };
});

function rod(from: Vec3, to: Vec3, radius: number): Solid {
  const way = between(from, to);
  const length = Math.hypot(way.x, way.y, way.z);
  const w = { x: way.x / length, y: way.y / length, z: way.z / length };
  // A string runs along the instrument, never across it.
  const aside = cross({ x: 0, y: 0, z: 1 }, w);
  const wide = Math.hypot(aside.x, aside.y, aside.z);
  const u = { x: aside.x / wide, y: aside.y / wide, z: aside.z / wide };
  const frame: Frame = { origin: from, u, v: cross(w, u), w };
  const outlines = [{ outer: circle({ x: 0, y: 0 }, radius), holes: [] }];
  return { kind: "place", solid: { kind: "extrude", outlines, height: length }, frame };
}
