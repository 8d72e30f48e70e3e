import type { Frame } from "./frame.ts";
import { fromFrame } from "./frame.ts";
import type { Outline, Solid } from "./solid.ts";

/**
 * A solid with outlines sunk into it: in a frame whose w points out of the face, from the face (w = 0) to `depth` (mm)
 * below. The recipe is a cut; a depth that isn't positive makes it invalid when it is meshed.
 */
export function recess(from: Solid, outlines: readonly Outline[], face: Frame, depth: number): Solid {
  return { kind: "cut", from, by: [sunk(outlines, face, depth)] };
}

/** The solid that a recess takes away. */
function sunk(outlines: readonly Outline[], face: Frame, depth: number): Solid {
  const frame = { ...face, origin: fromFrame(face, 0, 0, -depth) };
  return { kind: "place", solid: { kind: "extrude", outlines, height: depth }, frame };
}
