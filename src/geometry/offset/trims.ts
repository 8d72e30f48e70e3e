import type { Edge } from "../arrangement/edge.ts";
import { meetEdges } from "../intersect/meet-edges.ts";
import type { Parallel } from "./parallel.ts";

/** Where the parallel of an edge is cut off by its neighbours' at hollow corners; undefined where it is not. */
export type Trims = {
  readonly start: readonly (Cut | undefined)[];
  readonly end: readonly (Cut | undefined)[];
};
type Cut = { readonly x: number; readonly y: number; readonly share: number };

/**
 * Finds the cuts at the hollow corners of one loop. A corner is cut only where the two parallels meet once, and only
 * where that leaves something of both; then what is cut away lies twice in what the edges sweep, and the winding of the
 * rest is right without it. Any other corner is left to the arrangement.
 */
export function trimsOf(loop: readonly Parallel[], distance: number): Trims {
  const count = loop.length;
  const start: (Cut | undefined)[] = new Array(count).fill(undefined);
  const end: (Cut | undefined)[] = new Array(count).fill(undefined);
  for (let i = 0; i < count; i++) {
    const j = i + 1 === count ? 0 : i + 1;
    const before = loop[i]!;
    const after = loop[j]!;
    if (before.edge === undefined || after.edge === undefined || !isHollow(before, after, distance)) continue;
    const { points } = meetEdges(before.edge, after.edge);
    if (points.length !== 2) continue;
    const [x, y] = [points[0]!, points[1]!];
    end[i] = { x, y, share: shareAlong(before.edge, x, y) };
    start[j] = { x, y, share: shareAlong(after.edge, x, y) };
  }
  for (let i = 0; i < count; i++) {
    const [from, to] = [start[i], end[i]];
    if (from === undefined || to === undefined || from.share < to.share) continue;
    start[i] = end[i === 0 ? count - 1 : i - 1] = undefined;
    end[i] = start[i + 1 === count ? 0 : i + 1] = undefined;
  }
  return { start, end };
}

/** Whether the offset side of a corner is its hollow side. */
export function isHollow(before: Parallel, after: Parallel, distance: number): boolean {
  return (before.endX * after.startY - before.endY * after.startX) * distance < 0;
}

function shareAlong(edge: Edge, x: number, y: number): number {
  const fromA = Math.sqrt((x - edge.ax) ** 2 + (y - edge.ay) ** 2);
  const fromB = Math.sqrt((x - edge.bx) ** 2 + (y - edge.by) ** 2);
  return fromA / (fromA + fromB);
}
