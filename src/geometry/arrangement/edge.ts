import { tolerance } from "../tolerance.ts";

/**
 * A line or arc as the arrangement works with it: ends, circle, extents in mm, no angles. `turn` is 0 for a line, 1
 * for an arc counter-clockwise, -1 clockwise; an arc is at most half a circle. `weight` is what crossing the edge
 * from right to left adds to the winding; `source` tells edges cut from one another apart from strangers.
 */
export type Edge = {
  readonly ax: number;
  readonly ay: number;
  readonly bx: number;
  readonly by: number;
  readonly bulge: number;
  readonly turn: -1 | 0 | 1;
  readonly cx: number;
  readonly cy: number;
  readonly r: number;
  readonly minX: number;
  readonly minY: number;
  readonly maxX: number;
  readonly maxY: number;
  readonly weight: number;
  readonly source: number;
};

/** The line from a to b as an edge. */
export function lineEdge(
  ax: number,
  ay: number,
  bx: number,
  by: number,
  weight: number,
  source: number,
): Edge {
  return {
    ax,
    ay,
    bx,
    by,
    bulge: 0,
    turn: 0,
    cx: 0,
    cy: 0,
    r: 0,
    minX: Math.min(ax, bx),
    minY: Math.min(ay, by),
    maxX: Math.max(ax, bx),
    maxY: Math.max(ay, by),
    weight,
    source,
  };
}

/**
 * The arc from a to b on a known circle as an edge; `bulge` as in a path. The extents take in each of the circle's four
 * extreme points that lies on the arc's side of its chord.
 */
export function arcEdge(
  ax: number,
  ay: number,
  bx: number,
  by: number,
  bulge: number,
  cx: number,
  cy: number,
  r: number,
  weight: number,
  source: number,
): Edge {
  const turn = bulge > 0 ? 1 : -1;
  const dx = (bx - ax) * turn;
  const dy = (by - ay) * turn;
  const base = dx * (cy - ay) - dy * (cx - ax);
  const low = Math.min(ax, bx);
  const high = Math.max(ax, bx);
  const under = Math.min(ay, by);
  const over = Math.max(ay, by);
  return {
    ax,
    ay,
    bx,
    by,
    bulge,
    turn,
    cx,
    cy,
    r,
    minX: base + dy * r < 0 ? Math.min(low, cx - r) : low,
    minY: base - dx * r < 0 ? Math.min(under, cy - r) : under,
    maxX: base - dy * r < 0 ? Math.max(high, cx + r) : high,
    maxY: base + dx * r < 0 ? Math.max(over, cy + r) : over,
    weight,
    source,
  };
}

/**
 * The edge between two points with a bulge as in a path; too flat an arc is a line, by the rule of
 * `segmentBetween`.
 */
export function edgeBetween(
  ax: number,
  ay: number,
  bx: number,
  by: number,
  bulge: number,
  weight: number,
  source: number,
): Edge {
  const dx = bx - ax;
  const dy = by - ay;
  const size = Math.abs(bulge);
  const chord = size === 0 ? 0 : Math.sqrt(dx * dx + dy * dy);
  if (size * chord < tolerance.straight) return lineEdge(ax, ay, bx, by, weight, source);
  const aside = (1 - bulge * bulge) / (4 * bulge);
  const r = (chord * (1 + bulge * bulge)) / (4 * size);
  return arcEdge(
    ax,
    ay,
    bx,
    by,
    bulge,
    (ax + bx) / 2 - dy * aside,
    (ay + by) / 2 + dx * aside,
    r,
    weight,
    source,
  );
}
