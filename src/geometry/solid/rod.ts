import { circle } from "../circle.ts";
import { axesAlong } from "./axes-along.ts";
import type { Solid } from "./solid.ts";
import { between, lengthOf, unit, type Vec3 } from "./vec3.ts";

/** A round rod between two places that are apart, mm. */
export function rod(from: Vec3, to: Vec3, diameter: number): Solid {
  const way = between(from, to);
  const aside = Math.abs(unit(way).z) < 0.7 ? { x: 0, y: 0, z: 1 } : { x: 1, y: 0, z: 0 };
  const outlines = [{ outer: circle({ x: 0, y: 0 }, diameter / 2), holes: [] }];
  return {
    kind: "place",
    solid: { kind: "extrude", outlines, height: lengthOf(way) },
    frame: { origin: from, ...axesAlong(way, aside) },
  };
}
