import type { Path } from "../../geometry/path.ts";
import { ordinatesAt } from "../../geometry/path-measures/ordinates-at.ts";
import { pointOn } from "../../geometry/path-measures/segment-places.ts";
import type { Point } from "../../geometry/point.ts";
import { segmentsOf } from "../../geometry/segment.ts";
import { step } from "../../step/step.ts";
import { greatestAlong } from "./along.ts";
import { rolledAlong } from "./centres.ts";
import { aheadOf } from "./nearest.ts";

/**
 * What a cut is tried on, mm: the guided edge as it is written, with the template on its left, the template's whole outline (of an opening that of the
 * opening, clockwise, so that the template is on its left as well), the diameters of
 * guide and cutter, the finished edges that it has to bring out (in stretches, without what is left for the hand), the joined edges
 * that it must leave, and what it must not touch: clamps, pins, screws, handholds, each with its outline and the margin round it.
 */
export type VirtualCutInput = {
  readonly edge: Path;
  readonly template: Path;
  readonly guide: number;
  readonly cutter: number;
  readonly cut: readonly Path[];
  readonly joined: readonly Path[];
  readonly kept: readonly { readonly id: string; readonly path: Path; readonly margin: number }[];
};

/** How far the cutter stays from something kept, mm: its gap less the margin is negative where it comes too near. */
export type KeptGap = {
  readonly id: string;
  readonly gap: number;
  readonly margin: number;
  readonly at: Point;
};

/**
 * What a virtual cut leaves. `deviation`: the greatest distance between the finished edges and what is left, mm, and where; `taken` is the most
 * that is cut away inside them and `left` the most that stays outside. `joint`: how far the cutter comes
 * into the joined edges' side, 0 where it only runs past their ends. `nothing` where the guide rolls nowhere.
 */
export type VirtualCut =
  | {
      readonly kind: "ok";
      readonly deviation: number;
      readonly at: Point;
      readonly taken: number;
      readonly left: number;
      readonly joint: number;
      readonly kept: readonly KeptGap[];
    }
  | { readonly kind: "nothing" };

/**
 * Rolls the guide along the written guided edge, sweeps the cutter about the same middle and compares.
 *
 * A place of a finished edge lies on what is left just when the nearest middle is a cutter's radius away; nearer by so much is cut
 * away, farther is left standing. It tries the drawing and not the wood. It shares no line with what worked the guided edge out.
 */
export const virtualCut = step("guided.virtual-cut", 2, (given: VirtualCutInput): VirtualCut => {
  const { edge, template, guide, cutter, cut, joined, kept } = given;
  const opens = template.closed && isClockwise(template);
  // Nearer to no edge than its radius, a guide may still stand wholly in the template; what is free in one piece lies on one side of it.
  const way = rolledAlong(edge, guide / 2, [template]).filter(
    (part) => !template.closed || holds(template, pointOn(part, 0.5)) === opens,
  );
  if (way.length === 0) return { kind: "nothing" };
  const { distance } = aheadOf(way);
  const radius = cutter / 2;
  const finished = cut.flatMap(segmentsOf);
  const taken = greatestAlong(finished, (place) => radius - distance(place));
  const left = greatestAlong(finished, (place) => distance(place) - radius);
  const worst = taken.value > left.value ? taken : left;
  const none = finished.length === 0;
  return {
    kind: "ok",
    deviation: none ? 0 : Math.max(0, worst.value),
    at: worst.at,
    taken: none ? 0 : Math.max(0, taken.value),
    left: none ? 0 : Math.max(0, left.value),
    joint: Math.max(0, greatestAlong(joined.flatMap(segmentsOf), (place) => radius - distance(place)).value),
    kept: kept.map(({ id, path, margin }) => {
      const nearest = greatestAlong(segmentsOf(path), (place) => 0 - distance(place));
      // A middle inside the outline: the cutter is in it wherever its own circle ends.
      const within = path.closed && holds(path, way[0]!.from);
      return { id, margin, gap: within ? -radius : 0 - nearest.value - radius, at: nearest.at };
    }),
  };
});

/** Whether a closed outline runs clockwise: its chords and the caps of its arcs turn to the right in sum. */
function isClockwise({ points }: Path): boolean {
  const twice = points.reduce((sum, from, i) => {
    const to = points[(i + 1) % points.length]!;
    const sweep = 4 * Math.atan(from.bulge);
    const chord = Math.hypot(to.x - from.x, to.y - from.y);
    const radius = sweep === 0 ? 0 : chord / (2 * Math.sin(sweep / 2));
    return sum + from.x * to.y - from.y * to.x + radius ** 2 * (sweep - Math.sin(sweep));
  }, 0);
  return twice < 0;
}

/** Whether a closed outline runs round a place: an odd number of its sides lie below it. */
function holds(path: Path, { x, y }: Point): boolean {
  return ordinatesAt(segmentsOf(path), x).filter((side) => side < y).length % 2 === 1;
}
