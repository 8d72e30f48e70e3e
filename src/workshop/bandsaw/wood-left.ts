import type { Path } from "../../geometry/path.ts";
import { nearestPlace } from "../../geometry/path-measures/nearest-place.ts";
import { pointOn } from "../../geometry/path-measures/segment-places.ts";
import { whereabouts } from "../../geometry/path-measures/winding.ts";
import type { Point } from "../../geometry/point.ts";
import { segmentLength, segmentsOf } from "../../geometry/segment.ts";
import { step } from "../../step/step.ts";

/** A finished outline and what is left of the blank round it after sawing, both closed, mm. */
export type LeftInput = { readonly finished: Path; readonly kept: Path };

/** The least wood outside a finished outline and where that is; negative where the saw has gone into it, mm. */
export type WoodLeft = { readonly least: number; readonly at: Point };

/** Places on a finished outline stand no farther apart than this, mm. */
const apart = 3;

/**
 * The least wood that two-way sawing leaves outside the finished neck in one of the two views.
 *
 * Both cuts run square through the blank, so what is left of it is the two kept outlines, each raised square through the
 * other; from a place of the finished neck it is as far to the outside as in the view where that is nearer, and in a view the
 * neck's own outline lies nearest. So the two views' least is that of the solids.
 */
export const woodLeft = step("neck.wood-left", 1, ({ finished, kept }: LeftInput): WoodLeft => {
  const places = segmentsOf(finished).flatMap((segment) => {
    const count = Math.max(1, Math.ceil(segmentLength(segment) / apart));
    return Array.from({ length: count }, (_, i) => pointOn(segment, i / count));
  });
  return places.reduce<WoodLeft>(
    (least, at) => {
      const nearest = nearestPlace(kept, at);
      const away = nearest.kind === "ok" ? nearest.distance : 0;
      const left = whereabouts(kept, at) === "outside" ? -away : away;
      return left < least.least ? { least: left, at } : least;
    },
    { least: Number.POSITIVE_INFINITY, at: { x: 0, y: 0 } },
  );
});
