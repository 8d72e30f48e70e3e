import { arcEdge, type Edge, lineEdge } from "./edge.ts";

/**
 * The part of an edge between two points of it, in its direction. The ends are taken as given, so that parts that meet
 * in a vertex meet exactly.
 */
export function subedge(edge: Edge, ax: number, ay: number, bx: number, by: number): Edge {
  if (edge.turn === 0) return lineEdge(ax, ay, bx, by, edge.weight, edge.source);
  const bulge = bulgeOnCircle(edge, ax, ay, bx, by);
  if (bulge === 0) return lineEdge(ax, ay, bx, by, edge.weight, edge.source);
  return arcEdge(ax, ay, bx, by, bulge, edge.cx, edge.cy, edge.r, edge.weight, edge.source);
}

/**
 * The bulge of an edge's arc between two points on it. tan(sweep / 4) = sin(h) / (1 + cos(h)) for h = sweep / 2, with
 * sin(h) from the chord and cos(h) from the distance of the chord from the centre: good for slight arcs and for half
 * circles alike. Never more than half a circle, though moved ends may lie a little farther apart than its width.
 */
function bulgeOnCircle(edge: Edge, ax: number, ay: number, bx: number, by: number): number {
  const { cx, cy, r, turn } = edge;
  const chord = Math.sqrt((bx - ax) * (bx - ax) + (by - ay) * (by - ay));
  if (chord === 0) return 0;
  const cross = (ax - cx) * (by - cy) - (ay - cy) * (bx - cx);
  const cosine = Math.max(0, (turn * cross) / (chord * r));
  return turn * Math.min(1, chord / (2 * r * (1 + cosine)));
}

/** An edge walked the other way: what was to its left is to its right, and its weight is turned round with it. */
export function reversedEdge(edge: Edge): Edge {
  return {
    ...edge,
    ax: edge.bx,
    ay: edge.by,
    bx: edge.ax,
    by: edge.ay,
    bulge: -edge.bulge,
    turn: -edge.turn as -1 | 0 | 1,
    weight: -edge.weight,
  };
}
