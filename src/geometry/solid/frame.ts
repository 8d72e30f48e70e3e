import { tolerance } from "../tolerance.ts";
import { cross, dot, type Vec3 } from "./vec3.ts";

/**
 * Where something stands: its origin (mm) and its own three axes, of unit length and square to each other. Right-handed
 * as a rule; a left-handed frame mirrors what is placed in it.
 */
export type Frame = { readonly origin: Vec3; readonly u: Vec3; readonly v: Vec3; readonly w: Vec3 };

/** The frame that leaves everything where it is. */
export const upright: Frame = {
  origin: { x: 0, y: 0, z: 0 },
  u: { x: 1, y: 0, z: 0 },
  v: { x: 0, y: 1, z: 0 },
  w: { x: 0, y: 0, z: 1 },
};

/** The place in space of something at (x, y, z) of a frame. */
export function fromFrame({ origin, u, v, w }: Frame, x: number, y: number, z: number): Vec3 {
  return {
    x: origin.x + x * u.x + y * v.x + z * w.x,
    y: origin.y + x * u.y + y * v.y + z * w.y,
    z: origin.z + x * u.z + y * v.z + z * w.z,
  };
}

/** Whether a frame mirrors: its axes are left-handed. */
export function mirrors({ u, v, w }: Frame): boolean {
  return dot(cross(u, v), w) < 0;
}

/** What is wrong with a frame: numbers that are none or too large, axes not of unit length or not square to each other. */
export function frameProblem({
  origin,
  u,
  v,
  w,
}: Frame): "not-finite" | "too-large" | "frame-skewed" | undefined {
  const products = [dot(u, u) - 1, dot(v, v) - 1, dot(w, w) - 1, dot(u, v), dot(v, w), dot(w, u)];
  const places = [origin.x, origin.y, origin.z];
  if (![...places, ...products].every(Number.isFinite)) return "not-finite";
  if (places.some((value) => Math.abs(value) > tolerance.largest)) return "too-large";
  return products.every((value) => Math.abs(value) <= tolerance.exact) ? undefined : "frame-skewed";
}
