import { type BoardSurface, boardArc } from "./surface.ts";

/**
 * How high over the board's underside the floor of a slot across it at x lies at y, mm: an arc with the playing surface's own centre, so that
 * the slot is `depth` deep square to the surface everywhere, as a fret's tang is once it is bent to the board. Beyond that arc's
 * half circle it is level with its centre.
 */
export function slotFloor(board: BoardSurface, x: number, y: number, depth: number): number {
  const arc = boardArc(board, x);
  return arc.z + Math.sqrt(Math.max(0, (arc.radius - depth) ** 2 - (y - arc.y) ** 2));
}
