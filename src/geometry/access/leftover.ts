import type { Edge } from "../arrangement/edge.ts";
import type { Loop } from "../arrangement/outline.ts";
import { regionFrom } from "../arrangement/region-from.ts";
import type { Overlay } from "../boolean/overlay.ts";
import { signedArea } from "../measure.ts";
import type { Point } from "../point.ts";
import type { Piece } from "../region.ts";
import { tolerance } from "../tolerance.ts";
import { deepestFrom } from "./deepest.ts";

/**
 * One thing that a cutter leaves: its shape, its area in mm², its place (the point of it farthest from what the cutter
 * reaches) and its depth there, mm. The depth of what the cutter does not come near at all, a piece of the region too
 * narrow for it, is infinite and its place is on its outline.
 */
export type Leftover = {
  readonly piece: Piece;
  readonly area: number;
  readonly depth: number;
  readonly place: Point;
};

/** What is left, deepest first; what is no deeper than `tolerance.exact` is nothing. */
export function leftoversFrom(loops: readonly Loop[], { origin, count }: Overlay): Leftover[] {
  const isCutter = (edge: Edge) => edge.source >= count;
  return regionFrom(loops, origin.x, origin.y)
    .map((piece): Leftover => {
      const own = loops.filter((loop) => startsOn(loop, piece, origin)).flat();
      const deepest = deepestFrom(
        own.filter((edge) => !isCutter(edge)),
        own.filter(isCutter),
      );
      const area = [piece.outer, ...piece.holes].reduce((sum, path) => sum + signedArea(path), 0);
      const place = { x: deepest.x + origin.x, y: deepest.y + origin.y };
      return { piece, area, depth: deepest.depth, place };
    })
    .filter(({ depth }) => depth > tolerance.exact)
    .sort((a, b) => b.depth - a.depth || b.area - a.area);
}

/** Whether a loop became an outline of a piece: then the outline's points are among the loop's. */
function startsOn(loop: Loop, { outer, holes }: Piece, { x, y }: Point): boolean {
  return [outer, ...holes].some(({ points }) => {
    const first = points[0]!;
    const second = points[1]!;
    const has = (point: Point) => loop.some(({ ax, ay }) => ax + x === point.x && ay + y === point.y);
    return has(first) && has(second);
  });
}
