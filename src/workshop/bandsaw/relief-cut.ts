import { intersectSegments } from "../../geometry/intersect/intersect-segments.ts";
import { type Extents, pathLength } from "../../geometry/measure.ts";
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
  /** Which of several clear ways is taken: the one turned least from that, or the shortest; the first unless it is said. */
  readonly prefer?: "straight" | "short";
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

/** The relief cut to a tight place of a saw line: straight outward if that is clear, or else turned as little as it takes; or the shortest that is clear. */
export function reliefCut(given: ReliefInput): Relief {
  const { at, lines, blank } = given;
  if (isLeg(at, lines, blank)) return { kind: "leg" };
  const ways = turns.map((turn) => wayOutward(given, turn));
  const inOrder = given.prefer === "short" ? ways.toSorted((a, b) => pathLength(a) - pathLength(b)) : ways;
  const path = inOrder.find((way) => isClear(way, given));
  return path === undefined ? { kind: "none" } : { kind: "cut", path };
}

/** By how much a cut is turned from straight outward, in the order in which it is tried, degrees. */
const turns = Array.from({ length: 90 / fine.turn }, (_, i) => i * fine.turn).flatMap((turn) =>
  turn === 0 ? [0] : [turn, -turn],
);

function wayOutward({ at, outward, blank }: ReliefInput, turn: number): Path {
  const angle = (outward + turn) * (Math.PI / 180);
  return wayIn(at, { x: Math.cos(angle), y: Math.sin(angle) }, blank);
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
