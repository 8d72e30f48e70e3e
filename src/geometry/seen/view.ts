import { cross, unit, type Vec3 } from "../solid/vec3.ts";

/** A parallel view: paper's right and up, and the way toward whoever looks; unit directions, square to each other. */
export type View = { readonly right: Vec3; readonly up: Vec3; readonly toward: Vec3 };

/** The view from a direction, with `above` drawn upward as far as it is seen; that direction itself must not be looked along. */
export function viewFrom(toward: Vec3, above: Vec3): View {
  const near = unit(toward);
  const right = unit(cross(above, near));
  return { right, up: cross(near, right), toward: near };
}
