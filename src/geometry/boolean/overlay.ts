import { type Arrangement, arrange } from "../arrangement/arrange.ts";
import { type Chain, chainOf } from "../arrangement/chain.ts";
import type { Point } from "../point.ts";
import { outlinesOf, type Region } from "../region.ts";

/**
 * Two good regions laid over one another and cut where their outlines meet. Edges whose source is below `count` are
 * the first region's, where the two coincide too. All is moved by `-origin`; `inFirst` and `inSecond` read a face's
 * winding.
 */
export type Overlay = {
  readonly arrangement: Arrangement;
  readonly origin: Point;
  readonly count: number;
  readonly inFirst: (winding: number) => boolean;
  readonly inSecond: (winding: number) => boolean;
};

/** The second region's edges weigh so much more that one sum holds the windings of both. */
const heavy = 4096;

/** Lay two good regions over one another. Two empty regions give an empty overlay. */
export function overlay(a: Region, b: Region): Overlay {
  const [ofA, ofB] = [outlinesOf(a), outlinesOf(b)];
  const { x, y } = (ofA[0] ?? ofB[0])?.points[0] ?? { x: 0, y: 0 };
  const count = ofA.reduce((sum, { points }) => sum + points.length, 0);
  const both = together(chainOf(ofA, x, y, 1, 0), chainOf(ofB, x, y, heavy, count));
  const second = (winding: number) => Math.round(winding / heavy);
  return {
    arrangement: arrange(both),
    origin: { x, y },
    count,
    inFirst: (winding) => winding - heavy * second(winding) > 0,
    inSecond: (winding) => second(winding) > 0,
  };
}

function together(a: Chain, b: Chain): Chain {
  const count = a.edges.length;
  return {
    edges: [...a.edges, ...b.edges],
    starts: [...a.starts, ...b.starts.map((start) => start + count)],
  };
}
