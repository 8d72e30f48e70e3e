import Flatbush from "flatbush";
import { meetEdges } from "../intersect/meet-edges.ts";
import { tolerance } from "../tolerance.ts";
import { type Chain, nextInLoop } from "./chain.ts";
import type { Edge } from "./edge.ts";

/**
 * Where the edges of a chain meet other than by following one another. Vertices are numbered: i below the number of
 * edges is where edge i starts; crossings come after, at `x`, `y`. `cuts` lists edge, vertex, edge, vertex …: the edge
 * passes through the vertex between its ends. `joined` lists pairs of numbers that are one place.
 */
export type Contacts = {
  readonly x: readonly number[];
  readonly y: readonly number[];
  readonly cuts: readonly number[];
  readonly joined: readonly number[];
};

/** A spatial index over the extents of edges; at least one edge. */
export function indexOf(edges: readonly Edge[]): Flatbush {
  const index = new Flatbush(edges.length);
  for (let i = 0; i < edges.length; i++) {
    const edge = edges[i]!;
    index.add(edge.minX, edge.minY, edge.maxX, edge.maxY);
  }
  index.finish();
  return index;
}

/** All contacts between edges of a chain, or some of them where there are more than `most`. */
export function contactsOf(chain: Chain, index: Flatbush, most = Number.POSITIVE_INFINITY): Contacts {
  const { edges } = chain;
  const next = nextInLoop(chain);
  const count = edges.length;
  const x: number[] = [];
  const y: number[] = [];
  const cuts: number[] = [];
  const joined: number[] = [];
  const { snap } = tolerance;

  const endAt = (i: number, px: number, py: number): number => {
    const edge = edges[i]!;
    if (Math.abs(px - edge.ax) < snap && Math.abs(py - edge.ay) < snap) return i;
    if (Math.abs(px - edge.bx) < snap && Math.abs(py - edge.by) < snap) return next[i]!;
    return -1;
  };
  const note = (i: number, j: number, px: number, py: number) => {
    const atI = endAt(i, px, py);
    const atJ = endAt(j, px, py);
    if (atI >= 0 && atI === atJ) return;
    if (atI >= 0 && atJ >= 0) joined.push(atI, atJ);
    else if (atI >= 0) cuts.push(j, atI);
    else if (atJ >= 0) cuts.push(i, atJ);
    else {
      cuts.push(i, count + x.length, j, count + x.length);
      x.push(px);
      y.push(py);
    }
  };

  for (let i = 0; i < count && cuts.length <= 2 * most; i++) {
    const edge = edges[i]!;
    index.search(edge.minX - snap, edge.minY - snap, edge.maxX + snap, edge.maxY + snap, (j) => {
      if (j > i && !(next[i] === j && meetInCorner(edge, edges[j]!))) {
        const { points } = meetEdges(edge, edges[j]!);
        for (let k = 0; k < points.length; k += 2) note(i, j, points[k]!, points[k + 1]!);
      }
      return false;
    });
  }
  return { x, y, cuts, joined };
}

/**
 * Whether the extents of an edge and of the next one meet in one point only, or nearly: then they have their join in
 * common and nothing else, and most neighbours need no closer look.
 */
function meetInCorner(a: Edge, b: Edge): boolean {
  const wide = Math.min(a.maxX, b.maxX) - Math.max(a.minX, b.minX);
  const high = Math.min(a.maxY, b.maxY) - Math.max(a.minY, b.minY);
  return wide <= tolerance.snap && high <= tolerance.snap;
}
