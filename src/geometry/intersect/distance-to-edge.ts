import type { Edge } from "../arrangement/edge.ts";

/** The distance from a point to the nearest point of an edge, mm. */
export function distanceToEdge(edge: Edge, x: number, y: number): number {
  const { ax, ay, bx, by, cx, cy, r, turn } = edge;
  const ends = Math.sqrt(Math.min((x - ax) ** 2 + (y - ay) ** 2, (x - bx) ** 2 + (y - by) ** 2));
  const [dx, dy] = [bx - ax, by - ay];
  if (turn === 0) {
    const share = ((x - ax) * dx + (y - ay) * dy) / (dx * dx + dy * dy);
    if (share <= 0 || share >= 1) return ends;
    return Math.abs(dx * (y - ay) - dy * (x - ax)) / Math.sqrt(dx * dx + dy * dy);
  }
  // Within the arc's sector: between the rays from its centre through its ends.
  const pastStart = ((ax - cx) * (y - cy) - (ay - cy) * (x - cx)) * turn > 0;
  const beforeEnd = ((bx - cx) * (y - cy) - (by - cy) * (x - cx)) * turn < 0;
  if (!pastStart || !beforeEnd) return ends;
  return Math.abs(Math.sqrt((x - cx) ** 2 + (y - cy) ** 2) - r);
}
