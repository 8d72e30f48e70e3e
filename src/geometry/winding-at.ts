import { chainOf } from "./arrangement/chain.ts";
import { windingOf } from "./arrangement/winding.ts";
import { placeOn } from "./intersect/on-edge.ts";
import type { Path } from "./path.ts";
import type { Point } from "./point.ts";
import { outlinesOf, type Region } from "./region.ts";

/**
 * How many times closed paths wind round a point, counter-clockwise positive; exact for arcs. On a path itself it is
 * that of one side or the other: ask `placeIn` first. Open paths count as if a line closed them.
 */
export function windingAt(paths: readonly Path[], { x, y }: Point): number {
  let winding = 0;
  for (const edge of chainOf(paths, x, y).edges) winding += windingOf(edge, 0, 0);
  return winding;
}

/** `windingAt` for many points of the same paths. */
export function windingsOf(paths: readonly Path[]): (at: Point) => number {
  const { edges } = chainOf(paths, 0, 0);
  return ({ x, y }) => edges.reduce((winding, edge) => winding + windingOf(edge, x, y), 0);
}

/** Where a point lies against a good region: `on` an outline within `tolerance.snap`, `inside` or `outside` it. */
export function placeIn(region: Region, { x, y }: Point): "inside" | "outside" | "on" {
  let winding = 0;
  for (const edge of chainOf(outlinesOf(region), x, y).edges) {
    if (placeOn(edge, 0, 0) !== "off") return "on";
    winding += windingOf(edge, 0, 0);
  }
  return winding > 0 ? "inside" : "outside";
}
