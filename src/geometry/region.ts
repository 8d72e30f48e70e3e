import type { Path } from "./path.ts";

/** One connected piece of a region: its outline, counter-clockwise, and the holes in it, each clockwise. mm. */
export type Piece = { readonly outer: Path; readonly holes: readonly Path[] };

/**
 * An area of the plane with true arcs, mm. Its pieces do not overlap, holes lie inside their piece; outlines may touch
 * at points. No piece at all is the empty region.
 */
export type Region = readonly Piece[];

/** All outlines of a region, outer ones and holes, in order. */
export function outlinesOf(region: Region): Path[] {
  return region.flatMap((piece) => [piece.outer, ...piece.holes]);
}
