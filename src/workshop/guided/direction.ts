import type { Point } from "../../geometry/point.ts";
import type { Spindle } from "../../order/shop.ts";

/** Which way a spindle turns, seen from above the work. */
export type Rotation = Spindle["rotation"];

/**
 * The direction in which the cutting edge moves along the wood, where `normal` points out of the wood toward the cutter (both of unit
 * length, seen from above the work): n × z for a spindle that turns counter-clockwise, z × n for one that turns clockwise.
 */
export function alongWood({ x, y }: Point, rotation: Rotation): Point {
  return rotation === "ccw" ? { x: y, y: 0 - x } : { x: 0 - y, y: x };
}

/**
 * How a cut against the rotation runs at a place: `tool` is the cutter's travel as seen from the work, `feed` the way in which what moves
 * is pushed: the work past the tool, or the tool over the work. Both of unit length.
 */
export function againstRotation(
  normal: Point,
  { rotation, moves }: Pick<Spindle, "rotation" | "moves">,
): { readonly tool: Point; readonly feed: Point } {
  const tool = alongWood(normal, rotation);
  return { tool, feed: moves === "tool" ? tool : { x: 0 - tool.x, y: 0 - tool.y } };
}

/**
 * Which way an edge with the wood on its left is cut: `along` it as it is walked or `back` along it. It follows from the rotation alone:
 * counter-clockwise goes back, which is clockwise round an outside edge and, as an opening's edge is walked clockwise with the wood on
 * its left, counter-clockwise in an opening.
 */
export function wayAlong(rotation: Rotation): "along" | "back" {
  return rotation === "ccw" ? "back" : "along";
}
