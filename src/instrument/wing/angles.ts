import type { Frame } from "../../geometry/solid/frame.ts";
import { cross, dot, type Vec3 } from "../../geometry/solid/vec3.ts";
import type { Side } from "../../order/side.ts";
import { type JointSide, sign } from "./frame.ts";

/**
 * How a wing's joint edge is cut, degrees. `bevel` is the tilt of the mating face from square to the wing's front, positive where
 * the front arris is sharp; `mitre` is the turn of the joint line in the wing's front, from its u, positive opening to the tail.
 * `edge` is that line's direction, in the axes of the frame that were given.
 */
export type JointCut = { readonly bevel: number; readonly mitre: number; readonly edge: Vec3 };

/** What a wing's angles make of its joint edge, its frame and the core's side given in the same axes. */
export function jointCut(side: Side, { u, w }: Frame, { normal }: JointSide): JointCut {
  const across = cross(normal, w);
  const length = Math.hypot(across.x, across.y, across.z) * (across.x < 0 ? -1 : 1);
  const edge = { x: across.x / length, y: across.y / length, z: across.z / length };
  const degrees = 180 / Math.PI;
  return {
    // The sine and its cosine together, since an arcsine alone loses digits near 90 degrees.
    bevel: Math.atan2(dot(w, normal), Math.abs(length)) * degrees,
    mitre: Math.atan2(sign(side) * dot(cross(edge, u), w), dot(edge, u)) * degrees,
    edge,
  };
}
