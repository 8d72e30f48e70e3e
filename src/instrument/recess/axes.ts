import { type Frame, fromFrame, upright } from "../../geometry/solid/frame.ts";
import { between, dot, type Vec3 } from "../../geometry/solid/vec3.ts";
import type { RecessPart } from "../../order/recess-part.ts";
import { dimensionOf, type Spec } from "../../order/spec.ts";
import type { Among } from "./grounds.ts";

/** The own axes of a part that recesses are sunk into, in the core frame: its front lies in u and v, w out of it. */
export function axesOf(part: RecessPart, spec: Spec, { wings }: Pick<Among, "wings">): Frame {
  if (part === "neck") return upright;
  if (part === "body") return { ...upright, origin: { x: 0, y: 0, z: -dimensionOf(spec, "body.drop") } };
  return wings![part === "wing-bass" ? "bass" : "treble"].place.frame;
}

/** A place of a frame's own axes, in those that the frame is given in. */
export function outOf(frame: Frame, { x, y, z }: Vec3): Vec3 {
  return fromFrame(frame, x, y, z);
}

/** A place in a frame's own axes. */
export function into({ origin, u, v, w }: Frame, place: Vec3): Vec3 {
  const way = between(origin, place);
  return { x: dot(way, u), y: dot(way, v), z: dot(way, w) };
}
