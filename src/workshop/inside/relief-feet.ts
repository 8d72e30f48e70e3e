import type { Path } from "../../geometry/path.ts";
import type { Point } from "../../geometry/point.ts";
import { segmentsOf } from "../../geometry/segment.ts";

/** How near to half a circle an arc sweeps that frees a corner, radians. */
const within = 1e-4;

/**
 * Where the half circles that free a recess's corners meet its sides: there the kept wood has a corner that turns by 45 degrees, and nothing bears on
 * it. A half circle that has been parted has none.
 */
export function reliefFeet(outline: Path): Point[] {
  return segmentsOf(outline).flatMap((piece) =>
    piece.kind === "arc" && Math.abs(Math.abs(piece.sweep) - Math.PI) < within ? [piece.from, piece.to] : [],
  );
}

/** How much a corner beside a relief may come out rounded, mm: what shaped wood is held to (G: default, confirm). */
export const reliefRounded = 0.2;

/** How far a guided edge may lie inside the kept wood for a corner that turns by 45 degrees to be rounded by no more than that, mm. */
export const reliefOffset = reliefRounded / (1 / Math.cos(Math.PI / 8) - 1);
