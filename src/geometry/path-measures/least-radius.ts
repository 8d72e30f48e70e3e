import type { Path } from "../path.ts";
import type { Point } from "../point.ts";
import { segmentLength, segmentsOf } from "../segment.ts";
import { tolerance } from "../tolerance.ts";
import { directionOn, pointOn } from "./segment-places.ts";

/** The tightest bend of a path: its radius (mm, 0 at a corner), where, on which segment, and to which hand it turns. */
export type LeastRadius =
  | {
      readonly kind: "ok";
      readonly radius: number;
      readonly at: Point;
      readonly segment: number;
      readonly turn: "left" | "right";
    }
  | { readonly kind: "straight" };

/**
 * The least radius of a path, mm, among the bends to one hand or to either.
 *
 * A corner, where the direction changes by more than `tolerance.kink`, has radius 0 and stands at the start of its
 * segment; an arc's place is its middle. The first of several alike answers. `straight` where nothing bends that way.
 * A path running counter-clockwise turns left at its convex bends.
 */
export function leastRadius(path: Path, hand: "left" | "right" | "either" = "either"): LeastRadius {
  const segments = segmentsOf(path).map((segment, index) => ({ segment, index }));
  const real = segments.filter(({ segment }) => segmentLength(segment) > 0);
  let best: LeastRadius = { kind: "straight" };
  const take = (radius: number, turned: number, at: Point, segment: number) => {
    const turn = turned > 0 ? "left" : "right";
    if (hand !== "either" && turn !== hand) return;
    if (best.kind === "straight" || radius < best.radius) best = { kind: "ok", radius, at, segment, turn };
  };
  for (const [i, { segment, index }] of real.entries()) {
    const before = i > 0 ? real[i - 1] : path.closed ? real.at(-1) : undefined;
    if (before) {
      const [a, b] = [directionOn(before.segment, 1), directionOn(segment, 0)];
      const angle = Math.atan2(a.x * b.y - a.y * b.x, a.x * b.x + a.y * b.y);
      if (Math.abs(angle) > (tolerance.kink * Math.PI) / 180) take(0, angle, segment.from, index);
    }
    if (segment.kind === "arc") take(segment.radius, segment.sweep, pointOn(segment, 0.5), index);
  }
  return best;
}
