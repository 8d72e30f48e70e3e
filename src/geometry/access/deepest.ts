import type { Edge } from "../arrangement/edge.ts";
import { distanceToEdge } from "../intersect/distance-to-edge.ts";
import { middleOf } from "../intersect/middle.ts";

/** The point of some edges that is farthest from the nearest of others, and how far, mm. */
export type Deepest = { readonly x: number; readonly y: number; readonly depth: number };

/**
 * The point of `walls` that is farthest from all of `reach`. Looked for at the ends and, where an edge rises between
 * its ends, by halving it about its highest point until that is settled to a nanometre. Infinite where there is no
 * reach.
 */
export function deepestFrom(walls: readonly Edge[], reach: readonly Edge[]): Deepest {
  let best: Deepest = { x: walls[0]?.ax ?? 0, y: walls[0]?.ay ?? 0, depth: -1 };
  if (reach.length === 0) return { ...best, depth: Number.POSITIVE_INFINITY };
  for (const wall of walls) {
    const found = deepestOn(wall, (x, y) => distanceToEdges(reach, x, y));
    if (found.depth > best.depth) best = found;
  }
  return best;
}

type Height = (x: number, y: number) => number;

function deepestOn(edge: Edge, height: Height): Deepest {
  let parts = 8;
  let [from, to]: Place[] = [
    [edge.ax, edge.ay],
    [edge.bx, edge.by],
  ] as const as [Place, Place];
  let best: Deepest = { x: edge.ax, y: edge.ay, depth: height(edge.ax, edge.ay) };
  for (let round = 0; round < 24; round++) {
    const places = halved(edge, from!, to!, parts);
    let top = 0;
    places.forEach(([x, y], k) => {
      const depth = height(x, y);
      if (depth > best.depth) best = { x, y, depth };
      if (depth > height(...places[top]!)) top = k;
    });
    [from, to] = [places[Math.max(0, top - 1)]!, places[Math.min(places.length - 1, top + 1)]!];
    if (Math.abs(to[0] - from[0]) + Math.abs(to[1] - from[1]) < 1e-6) break;
    parts = 4;
  }
  return best;
}

type Place = [number, number];

/** Places along an edge between two of its points, by halving; `parts` is a power of two. */
function halved(edge: Edge, from: Place, to: Place, parts: number): Place[] {
  if (parts === 1) return [from, to];
  const middle = middleOf(edge, [...from, ...to]);
  const first = halved(edge, from, middle, parts / 2);
  return [...first, ...halved(edge, middle, to, parts / 2).slice(1)];
}

/** The distance from a point to the nearest of some edges, mm. */
function distanceToEdges(edges: readonly Edge[], x: number, y: number): number {
  let least = Number.POSITIVE_INFINITY;
  for (const edge of edges) least = Math.min(least, distanceToEdge(edge, x, y));
  return least;
}
