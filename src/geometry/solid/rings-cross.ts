import Flatbush from "flatbush";
import type { Point } from "../point.ts";

/**
 * Whether closed polygons cross or touch themselves or each other anywhere but at the vertex that two following edges
 * share; two following edges that fold back on each other cross. Coordinates are taken as they are, without tolerance.
 */
export function ringsCross(rings: readonly (readonly Point[])[]): boolean {
  const edges = rings.flatMap((ring) => ring.map((a, i) => ({ a, b: ring[(i + 1) % ring.length]! })));
  if (edges.length === 0) return false;
  const index = new Flatbush(edges.length);
  for (const { a, b } of edges) {
    index.add(Math.min(a.x, b.x), Math.min(a.y, b.y), Math.max(a.x, b.x), Math.max(a.y, b.y));
  }
  index.finish();
  for (const [i, { a, b }] of edges.entries()) {
    const later = (j: number) => j > i;
    const [minX, maxX] = [Math.min(a.x, b.x), Math.max(a.x, b.x)];
    const near = index.search(minX, Math.min(a.y, b.y), maxX, Math.max(a.y, b.y), later);
    for (const j of near) {
      const other = edges[j]!;
      if (
        other.a === b
          ? foldsBack(a, b, other.b)
          : other.b === a
            ? foldsBack(other.a, a, b)
            : meet(a, b, other)
      ) {
        return true;
      }
    }
  }
  return false;
}

function turn(a: Point, b: Point, c: Point): number {
  return (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x);
}

/** Whether the way from a to b and on to c turns right round. */
function foldsBack(a: Point, b: Point, c: Point): boolean {
  const forward = (b.x - a.x) * (c.x - b.x) + (b.y - a.y) * (c.y - b.y);
  return turn(a, b, c) === 0 && forward <= 0;
}

/** Whether two edges whose boxes overlap have a point in common. */
function meet(a: Point, b: Point, { a: c, b: d }: { a: Point; b: Point }): boolean {
  const [p, q, r, s] = [turn(c, d, a), turn(c, d, b), turn(a, b, c), turn(a, b, d)];
  if (p === 0 && q === 0) return true;
  return Math.sign(p) * Math.sign(q) <= 0 && Math.sign(r) * Math.sign(s) <= 0;
}
