import type { Edge } from "../arrangement/edge.ts";

/**
 * The point of an edge half way between two points of it (the first and the last of x, y, x, y …). Square to their chord
 * from the centre, so that it is good for half circles too.
 */
export function middleOf(edge: Edge, points: readonly number[]): [number, number] {
  const px = points[0]!;
  const py = points[1]!;
  const qx = points[points.length - 2]!;
  const qy = points[points.length - 1]!;
  if (edge.turn === 0) return [(px + qx) / 2, (py + qy) / 2];
  const dx = qx - px;
  const dy = qy - py;
  const chord = Math.sqrt(dx * dx + dy * dy);
  const forward = dx * (edge.bx - edge.ax) + dy * (edge.by - edge.ay) > 0 ? 1 : -1;
  const reach = (edge.turn * forward * edge.r) / chord;
  return [edge.cx + dy * reach, edge.cy - dx * reach];
}
