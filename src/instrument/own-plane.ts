import { type Frame, fromFrame } from "../geometry/solid/frame.ts";
import { between, dot, type Vec3 } from "../geometry/solid/vec3.ts";
import type { CoreFrame } from "./core/frame.ts";
import { coreAxes } from "./core/from-core.ts";
import { placeOfWing, type WingPlaceInput } from "./wing/place.ts";

/** A part's own plane: that of a wing's front, or one so far under the core's front, mm. */
export type OwnPlane =
  | { readonly kind: "wing"; readonly place: WingPlaceInput }
  | { readonly kind: "core"; readonly core: CoreFrame; readonly drop: number };

/** Puts a place of the instrument's axes into a part's own: x and y in its plane, y to the treble side, z out of the front; mm. */
export function intoPlane(plane: OwnPlane): (place: Vec3) => Vec3 {
  const core = coreAxes(plane.kind === "wing" ? plane.place.core : plane.core);
  if (plane.kind === "core") {
    const { drop } = plane;
    return (place) => {
      const { x, y, z } = into(core, place);
      return { x, y, z: z + drop };
    };
  }
  const { frame } = placeOfWing(plane.place);
  return (place) => into(frame, into(core, place));
}

/** The place among the instrument's axes of one in a part's own; mm. */
export function fromPlane(plane: OwnPlane, { x, y, z }: Vec3): Vec3 {
  const core = coreAxes(plane.kind === "wing" ? plane.place.core : plane.core);
  if (plane.kind === "core") return fromFrame(core, x, y, z - plane.drop);
  const at = fromFrame(placeOfWing(plane.place).frame, x, y, z);
  return fromFrame(core, at.x, at.y, at.z);
}

function into({ origin, u, v, w }: Frame, place: Vec3): Vec3 {
  const from = between(origin, place);
  return { x: dot(from, u), y: dot(from, v), z: dot(from, w) };
}
