import type { Path } from "../../geometry/path.ts";
import { nearestPlace } from "../../geometry/path-measures/nearest-place.ts";
import { pointOn } from "../../geometry/path-measures/segment-places.ts";
import { whereabouts } from "../../geometry/path-measures/winding.ts";
import { segmentLength, segmentsOf } from "../../geometry/segment.ts";
import { step } from "../../step/step.ts";

/** A body's outline, what of it isn't its head end, and one side of the room for the core, from the tail's middle to the head end. */
export type BodyWallInput = { readonly path: Path; readonly rim: Path; readonly side: Path };

/** The least wood between the core's room and the body's rim, mm: negative where the room leaves the body. `at` is where, along the core's front. */
export type BodyWall = { readonly left: number; readonly at: number };

/** How closely the room's side is looked at, mm; the rim's own radii make less than a hundredth of it. */
const apart = 2;

/** The wood beside the core and behind its tail. At the head end it is what is left beside the rounded corner. */
export const bodyWall = step("body.wall", 1, ({ path, rim, side }: BodyWallInput): BodyWall => {
  const places = segmentsOf(side).flatMap((segment) => {
    const count = Math.ceil(segmentLength(segment) / apart);
    return Array.from({ length: count + 1 }, (_, i) => pointOn(segment, i / count));
  });
  const walls = places.map((place): BodyWall => {
    const nearest = nearestPlace(rim, place);
    const distance = nearest.kind === "ok" ? nearest.distance : 0;
    return { left: whereabouts(path, place) === "outside" ? -distance : distance, at: place.x };
  });
  return walls.reduce((least, wall) => (wall.left < least.left ? wall : least));
});
