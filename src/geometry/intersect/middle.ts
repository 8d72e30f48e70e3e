import type { Edge } from "../arrangement/edge.ts";

/**
 * The point of an edge half way between two points of it (the first and the last of x, y, x, y …). Up from the
 * middle of their chord by the rise, c² / (r + √(r² - c²)) for half a chord c: good for the slightest of arcs and for
 * half circles.
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
  const half = chord / 2;
  const rise = (half * half) / (edge.r + Math.sqrt(Math.max(0, edge.r * edge.r - half * half)));
  const aside = chord === 0 ? 0 : (edge.turn * forward * rise) / chord;
  return [(px + qx) / 2 + dy * aside, (py + qy) / 2 - dx * aside];
}
