import type { Chain } from "../arrangement/chain.ts";
import type { Edge } from "../arrangement/edge.ts";
import { closeLoop, drawEdge, type Pen, penAt } from "../arrangement/pen.ts";
import { subedge } from "../arrangement/subedge.ts";
import { drawCorner } from "./corner.ts";
import type { OffsetOptions } from "./options.ts";
import { type Parallel, parallelOf, startOf } from "./parallel.ts";
import { type Trims, trimsOf } from "./trims.ts";

/** How many names each edge has: one for its parallel, the rest for what is drawn about the corner at its end. */
export const namesPerEdge = 5;

/**
 * The loops whose winding is at least 1 just where the offset of a region lies.
 *
 * The region's boundary, plus the boundary of what each edge sweeps when moved square by the distance, plus a sector
 * about each corner on its outside: the sum of these cycles winds round a point as many times as it is covered.
 * Shared sides cancel, and what is left is each edge's parallel, joined round the outside of corners and by way of
 * the corner itself on the hollow side. An arc whose centre is nearer than the distance sweeps its sector only: by
 * way of the centre; and as the centre is on the way from corner to parallel, that way is not drawn there and back.
 * For a negative distance the same holds with sweeps taken away. (Chen and McMains, Polygon offsetting by computing
 * winding numbers, 2005, for polygons.)
 *
 * Edges are named by `namesPerEdge` times their number, what is drawn about the corner after one by the names
 * between.
 */
export function rawChain(source: Chain, distance: number, options: Required<OffsetOptions>): Chain {
  const edges: Edge[] = [];
  const starts: number[] = [];
  const { starts: from } = source;
  for (let k = 0; k < from.length; k++) {
    const end = from[k + 1] ?? source.edges.length;
    const loop: Parallel[] = [];
    for (let i = from[k]!; i < end; i++) loop.push(parallelOf(source.edges[i]!, distance, namesPerEdge * i));
    drawLoop(loop, trimsOf(loop, distance), distance, options, edges, starts);
  }
  return { edges, starts };
}

function drawLoop(
  loop: readonly Parallel[],
  trims: Trims,
  distance: number,
  options: Required<OffsetOptions>,
  edges: Edge[],
  starts: number[],
) {
  const first = loop[0]!;
  const home = trims.start[0] ?? startOf(first, distance);
  const pen = penAt(home.x, home.y);
  for (let i = 0; i < loop.length; i++) {
    const here = loop[i]!;
    const after = loop[i + 1 === loop.length ? 0 : i + 1]!;
    const cut = trims.end[i];
    drawParallel(pen, here, trims.start[i] !== undefined, cut);
    if (cut === undefined) drawCorner(pen, here, after, distance, options);
  }
  closeLoop(pen, edges, starts);
}

function drawParallel(
  pen: Pen,
  { edge }: Parallel,
  cutAtStart: boolean,
  cut: { readonly x: number; readonly y: number } | undefined,
) {
  if (edge === undefined) return;
  if (cut === undefined && !cutAtStart) drawEdge(pen, edge);
  else drawEdge(pen, subedge(edge, pen.x, pen.y, cut?.x ?? edge.bx, cut?.y ?? edge.by));
}
