import type { Path } from "../path.ts";
import { type Edge, edgeBetween } from "./edge.ts";
import { closeLoop, drawEdge, penAt } from "./pen.ts";

/**
 * Closed loops of edges. `starts` are the positions in `edges` where a loop begins; each loop runs to the next start,
 * the last to the end. An edge starts where the one before it in its loop ends.
 */
export type Chain = { readonly edges: readonly Edge[]; readonly starts: readonly number[] };

/**
 * Closed paths as a chain, moved by (-ox, -oy), each edge with the given weight and named from `source` on. Edges
 * shorter than `tolerance.tiny` are left out and their neighbours meet.
 */
export function chainOf(paths: readonly Path[], ox: number, oy: number, weight = 1, source = 0): Chain {
  const edges: Edge[] = [];
  const starts: number[] = [];
  let name = source;
  for (const { points } of paths) {
    const first = points[0];
    if (first === undefined) continue;
    const pen = penAt(first.x - ox, first.y - oy);
    for (let i = 0; i < points.length; i++) {
      const to = i + 1 < points.length ? points[i + 1]! : first;
      drawEdge(pen, edgeBetween(pen.x, pen.y, to.x - ox, to.y - oy, points[i]!.bulge, weight, name + i));
    }
    closeLoop(pen, edges, starts);
    name += points.length;
  }
  return { edges, starts };
}

/** For each edge the position of the one after it in its loop. */
export function nextInLoop({ edges, starts }: Chain): Int32Array {
  const next = new Int32Array(edges.length);
  for (let i = 0; i < edges.length; i++) next[i] = i + 1;
  for (let k = 0; k < starts.length; k++) {
    const end = k + 1 < starts.length ? starts[k + 1]! : edges.length;
    next[end - 1] = starts[k]!;
  }
  return next;
}
