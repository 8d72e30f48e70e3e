import type { Edge } from "../arrangement/edge.ts";
import type { Half } from "../arrangement/fan.ts";
import { joinedAlong } from "../arrangement/rejoin.ts";
import type { Run } from "../arrangement/runs.ts";
import { reversedEdge } from "../arrangement/subedge.ts";
import type { Path, PathPoint } from "../path.ts";
import type { Overlay } from "./overlay.ts";

/**
 * Where the outlines of two regions lie on one another with both regions on the left: open paths, or closed ones where
 * whole outlines are shared. Arcs stay arcs.
 */
export function sharedOutline({ arrangement, origin, inFirst, inSecond }: Overlay): Path[] {
  const { runs, windings } = arrangement;
  const within = (winding: number) => inFirst(winding) && inSecond(winding);
  const without = (winding: number) => !inFirst(winding) && !inSecond(winding);
  const leaving = new Map<number, Half>();
  const alone: Half[] = [];
  for (let half = 0; half < windings.length; half++) {
    if (!within(windings[half]!) || !without(windings[half ^ 1]!)) continue;
    const tail = tailOf(half, runs);
    if (tail < 0) alone.push(half);
    else leaving.set(tail, half);
  }
  const paths = alone.map((half) => pathOf(edgesOf(half, runs), true, origin));
  const arrived = new Set([...leaving.values()].map((half) => tailOf(half ^ 1, runs)));
  const firsts = [...leaving.keys()].filter((tail) => !arrived.has(tail));
  for (const first of [...firsts, ...leaving.keys()]) {
    const edges: Edge[] = [];
    let at = first;
    for (let half = leaving.get(at); half !== undefined; half = leaving.get(at)) {
      leaving.delete(at);
      edges.push(...edgesOf(half, runs));
      at = tailOf(half ^ 1, runs);
    }
    if (edges.length > 0) paths.push(pathOf(edges, at === first, origin));
  }
  return paths;
}

function tailOf(half: Half, runs: readonly Run[]): number {
  const run = runs[half >> 1]!;
  return half % 2 === 0 ? run.from : run.to;
}

function edgesOf(half: Half, runs: readonly Run[]): readonly Edge[] {
  const { edges } = runs[half >> 1]!;
  return half % 2 === 0 ? edges : edges.toReversed().map(reversedEdge);
}

function pathOf(edges: readonly Edge[], closed: boolean, { x, y }: { x: number; y: number }): Path {
  const joined = joinedAlong(edges);
  const points = joined.map(({ ax, ay, bulge }): PathPoint => ({ x: ax + x, y: ay + y, bulge }));
  const last = joined.at(-1)!;
  if (!closed) points.push({ x: last.bx + x, y: last.by + y, bulge: 0 });
  return { closed, points };
}
