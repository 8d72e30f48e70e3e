import type { Path } from "../../geometry/path.ts";
import { ordinatesAt } from "../../geometry/path-measures/ordinates-at.ts";
import { nearestShare, pointOn } from "../../geometry/path-measures/segment-places.ts";
import type { Point } from "../../geometry/point.ts";
import { type Segment, segmentLength, segmentsOf } from "../../geometry/segment.ts";
import { step } from "../../step/step.ts";

/** A body's outline without its head end, and one side of the room for the core, from the tail's middle to the head end. */
export type BodyWallInput = { readonly rim: Path; readonly side: Path };

/** The least wood between the core's room and the body's rim, mm: negative where the room leaves the body. `at` is where, along the core's front. */
export type BodyWall = { readonly left: number; readonly at: number };

/** How closely the room's side is looked at, mm; the rim's own radii make less than a hundredth of it. */
const apart = 2;

/** The wood beside the core and behind its tail. At the head end it is what is left beside the rounded corner. */
export const bodyWall = step("body.wall", 1, ({ rim, side }: BodyWallInput): BodyWall => {
  const edges = segmentsOf(rim);
  const places = segmentsOf(side).flatMap((segment) => {
    const count = Math.ceil(segmentLength(segment) / apart);
    return Array.from({ length: count + 1 }, (_, i) => pointOn(segment, i / count));
  });
  const walls = places.map((place): BodyWall => {
    const distance = Math.min(...edges.map((edge) => distanceTo(edge, place)));
    // Of a place in the body the rim lies further out on both sides; past its tail it lies nowhere.
    const rimAt = ordinatesAt(edges, place.x).at(-1);
    const inside = rimAt !== undefined && place.y < rimAt;
    return { left: inside ? distance : -distance, at: place.x };
  });
  return walls.reduce((least, wall) => (wall.left < least.left ? wall : least));
});

function distanceTo(edge: Segment, place: Point): number {
  const nearest = pointOn(edge, nearestShare(edge, place));
  return Math.hypot(place.x - nearest.x, place.y - nearest.y);
}
