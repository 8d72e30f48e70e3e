import { intersectSegments } from "../../geometry/intersect/intersect-segments.ts";
import type { Extents } from "../../geometry/measure.ts";
import type { Path } from "../../geometry/path.ts";
import { nearestPlace } from "../../geometry/path-measures/nearest-place.ts";
import { directionOn, pointOn } from "../../geometry/path-measures/segment-places.ts";
import type { Point } from "../../geometry/point.ts";
import { type Line, segmentsOf } from "../../geometry/segment.ts";
import { tolerance } from "../../geometry/tolerance.ts";
import { wayOut } from "./led-on.ts";

/** What the relief cut to a tight place has to keep clear of; mm. */
export type ReliefInput = {
  readonly at: Point;
  /** Which way leads out of the kept wood there, degrees from x. */
  readonly outward: number;
  readonly lines: readonly Path[];
  readonly kept: Path;
  readonly blank: Extents;
  readonly kerf: number;
};

/**
 * The way in to a tight place: a straight `cut` through waste from the blank's edge, which stops on the saw line; `leg` where
 * the saw line itself comes straight in from the edge there; `none` where no straight way leads through waste alone.
 */
export type Relief =
  | { readonly kind: "cut"; readonly path: Path }
  | { readonly kind: "leg" }
  | { readonly kind: "none" };

/** How finely a cut is looked along, and turned until it is clear: its share of length, and degrees. */
const fine = { along: 1 / 16, turn: 15 };

/** The relief cut to a tight place of a saw line: straight outward if that is clear, or else turned as little as it takes. */
export function reliefCut(given: ReliefInput): Relief {
  const { at, outward, lines, blank } = given;
  if (isLeg(at, lines, blank)) return { kind: "leg" };
  for (let turn = 0; turn < 90; turn += fine.turn) {
    for (const side of turn === 0 ? [1] : [1, -1]) {
      const angle = (outward + side * turn) * (Math.PI / 180);
      const path = wayIn(at, { x: Math.cos(angle), y: Math.sin(angle) }, blank);
      if (isClear(path, given)) return { kind: "cut", path };
    }
  }
  return { kind: "none" };
}

/** Whether the line that the place is on runs straight from it to the blank's edge. */
function isLeg({ x, y }: Point, lines: readonly Path[], { minY, maxY }: Extents): boolean {
  return lines.some((line) => {
    const segments = segmentsOf(line);
    return [segments[0]!, segments.at(-1)!].some((segment) => {
      const direction = directionOn(segment, 0);
      const square = segment.kind === "line" && Math.abs(direction.y) > Math.abs(direction.x);
      const ends = [segment.from, segment.to];
      const touches = ends.some((end) => Math.hypot(end.x - x, end.y - y) < tolerance.exact);
      const leaves = ends.some((end) => Math.min(end.y - minY, maxY - end.y) < tolerance.exact);
      return square && touches && leaves;
    });
  });
}

/** The straight way from the blank's edge to a place, arriving against `outward`. */
function wayIn({ x, y }: Point, outward: Point, blank: Extents): Path {
  const reach = wayOut({ x, y }, outward, blank);
  const edge = { x: x + outward.x * reach, y: y + outward.y * reach, bulge: 0 };
  return { closed: false, points: [edge, { x, y, bulge: 0 }] };
}

/** Whether a cut touches no saw line but where it ends, and its kerf stays out of the wood that is kept. */
function isClear(path: Path, { at, lines, kept, kerf }: ReliefInput): boolean {
  const way = segmentsOf(path)[0] as Line;
  if (Math.hypot(way.from.x - at.x, way.from.y - at.y) <= kerf) return false;
  const crosses = lines.flatMap(segmentsOf).some((segment) => {
    const met = intersectSegments(way, segment);
    if (met.outcome === "none") return false;
    if (met.outcome !== "one" && met.outcome !== "tangent") return true;
    return Math.hypot(met.at.x - at.x, met.at.y - at.y) > tolerance.exact;
  });
  if (crosses) return false;
  for (let share = 0; share <= 1; share += fine.along) {
    const nearest = nearestPlace(kept, pointOn(way, share));
    if (nearest.kind !== "ok" || nearest.distance < kerf / 2 - tolerance.exact) return false;
  }
  return true;
}
