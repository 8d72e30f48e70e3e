import type { Edge } from "../arrangement/edge.ts";
import { tolerance } from "../tolerance.ts";

/**
 * Where a point lies against an edge: `start` or `end` within `tolerance.snap` of that end, `inside` nearer than that
 * to the edge between its ends, `off` otherwise. The end that is nearer counts.
 */
export type Place = "start" | "end" | "inside" | "off";

/** Where a point lies against an edge. */
export function placeOn(edge: Edge, x: number, y: number): Place {
  const { snap } = tolerance;
  if (x < edge.minX - snap || x > edge.maxX + snap || y < edge.minY - snap || y > edge.maxY + snap)
    return "off";
  const fromA = (x - edge.ax) * (x - edge.ax) + (y - edge.ay) * (y - edge.ay);
  const fromB = (x - edge.bx) * (x - edge.bx) + (y - edge.by) * (y - edge.by);
  if (fromA < snap * snap && fromA <= fromB) return "start";
  if (fromB < snap * snap) return "end";
  const dx = edge.bx - edge.ax;
  const dy = edge.by - edge.ay;
  const aside = dx * (y - edge.ay) - dy * (x - edge.ax);
  if (edge.turn === 0) {
    const along = dx * (x - edge.ax) + dy * (y - edge.ay);
    const square = dx * dx + dy * dy;
    return along > 0 && along < square && aside * aside < snap * snap * square ? "inside" : "off";
  }
  const away = Math.sqrt((x - edge.cx) * (x - edge.cx) + (y - edge.cy) * (y - edge.cy));
  return Math.abs(away - edge.r) < snap && beyondChord(edge, aside) ? "inside" : "off";
}

/**
 * Whether a point of an arc's circle is on the arc, told by the side of the chord that it is on. As an arc is at most
 * half a circle this settles it; `aside` is the cross product of the chord with the way from its start to the point.
 */
function beyondChord(edge: Edge, aside: number): boolean {
  return aside * edge.turn < 0;
}

/** Whether a point known to be on the edge's line or circle is between its ends, or within `tolerance.snap` of one. */
export function within(edge: Edge, x: number, y: number): boolean {
  const { snap } = tolerance;
  const px = x - edge.ax;
  const py = y - edge.ay;
  const dx = edge.bx - edge.ax;
  const dy = edge.by - edge.ay;
  if (edge.turn === 0) {
    const along = dx * px + dy * py;
    if (along > 0 && along < dx * dx + dy * dy) return true;
  } else if (beyondChord(edge, dx * py - dy * px)) return true;
  if (px * px + py * py < snap * snap) return true;
  return (x - edge.bx) * (x - edge.bx) + (y - edge.by) * (y - edge.by) < snap * snap;
}
