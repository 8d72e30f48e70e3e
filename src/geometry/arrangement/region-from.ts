import type { Path, PathPoint } from "../path.ts";
import type { Piece, Region } from "../region.ts";
import { tolerance } from "../tolerance.ts";
import type { Edge } from "./edge.ts";
import { loopArea } from "./loop-area.ts";
import type { Loop } from "./outline.ts";
import { rejoined } from "./rejoin.ts";
import { windingOf } from "./winding.ts";

/** A loop with what it takes to sort loops into pieces. */
type Measured = { readonly loop: Loop; readonly area: number };

/**
 * Loops with their region on the left, moved by (ox, oy), as a region: each clockwise loop becomes a hole of the least
 * counter-clockwise one round it. Loops thinner than `tolerance.snap` are nothing.
 */
export function regionFrom(loops: readonly Loop[], ox: number, oy: number): Region {
  const measured = loops
    .map(rejoined)
    .map((loop) => ({ loop, area: loopArea(loop) }))
    .filter(isMore);
  const outers = measured.filter(({ area }) => area > 0).sort((a, b) => a.area - b.area);
  const holes = measured.filter(({ area }) => area < 0);
  const holesOf = new Map<Measured, Path[]>(outers.map((outer) => [outer, []]));
  for (const hole of holes) {
    // A hole is never dropped: if none is found to surround it, it belongs to the largest.
    const home = outers.find((outer) => outers.length === 1 || surrounds(outer, hole)) ?? outers.at(-1);
    if (home !== undefined) holesOf.get(home)!.push(pathOf(hole.loop, ox, oy));
  }
  return outers.map((outer): Piece => ({ outer: pathOf(outer.loop, ox, oy), holes: holesOf.get(outer)! }));
}

/** Whether a loop is more than a sliver as thin as the tolerance. */
function isMore({ loop, area }: Measured): boolean {
  let round = 0;
  for (const edge of loop) round += Math.sqrt((edge.bx - edge.ax) ** 2 + (edge.by - edge.ay) ** 2);
  return Math.abs(area) > tolerance.snap * round;
}

/** Whether a loop surrounds another that does not cross it, told by the middle of the other's longest edge. */
function surrounds(outer: Measured, hole: Measured): boolean {
  if (outer.area < -hole.area) return false;
  const { x, y } = longestMiddle(hole.loop);
  let winding = 0;
  for (const edge of outer.loop) winding += windingOf(edge, x, y);
  return winding > 0;
}

function longestMiddle(loop: Loop): { x: number; y: number } {
  let longest = loop[0]!;
  const chord = (edge: Edge) => (edge.bx - edge.ax) ** 2 + (edge.by - edge.ay) ** 2;
  for (const edge of loop) if (chord(edge) > chord(longest)) longest = edge;
  const { ax, ay, bx, by, bulge } = longest;
  return { x: (ax + bx) / 2 + (bulge * (by - ay)) / 2, y: (ay + by) / 2 - (bulge * (bx - ax)) / 2 };
}

function pathOf(loop: Loop, ox: number, oy: number): Path {
  const points = loop.map(({ ax, ay, bulge }): PathPoint => ({ x: ax + ox, y: ay + oy, bulge }));
  return { closed: true, points };
}
