import type { Frame } from "../../geometry/solid/frame.ts";
import { cross, dot, type Vec3 } from "../../geometry/solid/vec3.ts";
import type { Side } from "../../order/side.ts";

/** +1 on the treble side, where y is positive, -1 on the bass side. */
export function sign(side: Side): 1 | -1 {
  return side === "treble" ? 1 : -1;
}

/** A wing's turns about the core, degrees: positive splay opens to the tail, positive cant drops the outer edge, positive rake lifts the tail end. */
export type WingAngles = { readonly splay: number; readonly cant: number; readonly rake: number };

/** The core's side that a wing joins, in the core frame: the joint line's direction toward the tail and the unit normal out of the core. */
export type JointSide = { readonly along: Vec3; readonly normal: Vec3 };

/**
 * The side of a core whose half width grows by `taper` degrees toward the tail, seen from the front of the instrument: it stands square
 * to z = 0, from which the core's front falls away by `slope`.
 */
export function jointSide(side: Side, taper: number, slope: number): JointSide {
  const s = sign(side);
  const [t, f] = [(taper * Math.PI) / 180, (slope * Math.PI) / 180];
  const across = Math.hypot(Math.cos(t), Math.sin(t) * Math.cos(f));
  return {
    along: { x: Math.cos(t) / across, y: (s * Math.sin(t) * Math.cos(f)) / across, z: 0 },
    normal: { x: -Math.sin(t) * Math.cos(f), y: s * Math.cos(t), z: -Math.sin(t) * Math.sin(f) },
  };
}

/** v turned about the unit axis by an angle in degrees, by the right-hand rule (Rodrigues). */
function turned(v: Vec3, axis: Vec3, degrees: number): Vec3 {
  const angle = (degrees * Math.PI) / 180;
  const [c, s, along] = [Math.cos(angle), Math.sin(angle), dot(axis, v) * (1 - Math.cos(angle))];
  const across = cross(axis, v);
  return {
    x: v.x * c + across.x * s + axis.x * along,
    y: v.y * c + across.y * s + axis.y * along,
    z: v.z * c + across.z * s + axis.z * along,
  };
}

/**
 * A wing's own frame in the core frame, at `origin`: flat, u lies along x' and w along z'. About fixed axes, one after the other:
 * splay about z', cant about the joint line, rake about y'.
 */
export function wingFrame(
  side: Side,
  { splay, cant, rake }: WingAngles,
  { along }: JointSide,
  origin: Vec3,
): Frame {
  const s = sign(side);
  const placed = (axis: Vec3) =>
    turned(
      turned(turned(axis, { x: 0, y: 0, z: 1 }, s * splay), along, -s * cant),
      { x: 0, y: 1, z: 0 },
      -rake,
    );
  return {
    origin,
    u: placed({ x: 1, y: 0, z: 0 }),
    v: placed({ x: 0, y: 1, z: 0 }),
    w: placed({ x: 0, y: 0, z: 1 }),
  };
}
