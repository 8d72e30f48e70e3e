import type { Path } from "../../geometry/path.ts";
import { nearestPlace } from "../../geometry/path-measures/nearest-place.ts";
import { whereabouts } from "../../geometry/path-measures/winding.ts";
import { between, dot } from "../../geometry/solid/vec3.ts";
import { step } from "../../step/step.ts";
import { lowerTo, type Wall } from "../wall.ts";
import { sign } from "./frame.ts";
import type { WingJoint } from "./joint.ts";
import { placeOfWing, type WingPlaceInput } from "./place.ts";

/**
 * A wing's pins in its outline and in the core, mm. `path` is the outline led on past the joint, since a joint face that leans the other way
 * lies outside the front's own joint line at the back; `coreWidth` is the core's least over the joint, which the other wing's pins stand in too.
 */
export type WingPinWallsInput = {
  readonly place: WingPlaceInput;
  readonly path: Path;
  readonly pins: WingJoint["pins"];
  readonly pin: { readonly diameter: number; readonly depth: number };
  readonly coreWidth: number;
  readonly wall: number;
};

/** In how many steps along a pin's hole the wing's outline is looked at. */
const looks = 8;

/**
 * The wood left round the holes of a wing's pins: to front and back of wing and core, to what is cut of the wing's outline, to each
 * other, and from the core's middle, which belongs to the other wing's pins beyond.
 */
export const wingPinWalls = step("wing.pin-walls", 2, (given: WingPinWallsInput): readonly Wall[] => {
  const { pins, pin, coreWidth, wall } = given;
  const own = (name: string) => `wing.${given.place.side}.${name}`;
  const named = (id: string) => `pin ${id} of the ${given.place.side} wing`;
  const cut = cutEdges(given.path);
  const size = [own("pin"), own("pin.depth")];
  const shallower = (by: number) => lowerTo(own("pin.depth"), pin.depth - by);
  const round = pins.flatMap(({ id, along, wing, core, at }, i): Wall[] => {
    const faces = Math.min(wing.front, wing.back);
    const inCore = Math.min(core.front, core.back);
    const toEdge = leastToEdge(given, cut, at);
    return [
      {
        ...{
          left: faces,
          between: `${named(id)} and the wing's ${wing.front < wing.back ? "front" : "back"}`,
        },
        ids: [own("cant"), own("thickness"), ...size],
        mend: `${shallower((wall - faces) / slant(given))} or move the pin`,
      },
      {
        ...{
          left: inCore,
          between: `${named(id)} and the core's ${core.front < core.back ? "front" : "back"}`,
        },
        ids: [own("drop"), own("rake"), "core.depth", own("pin")],
        mend: `move pin ${id} or change ${own("drop")}`,
      },
      {
        ...{ left: toEdge, between: `${named(id)} and the wing's edge` },
        ids: [own("width"), ...size],
        mend: `move pin ${id} to where the wing is wider, or ${shallower(wall - toEdge)}`,
      },
      ...pins.slice(i + 1).map((other) => ({
        ...{
          left: Math.abs(other.along - along) - pin.diameter,
          between: `${named(id)} and ${named(other.id)}`,
        },
        ...{ ids: [own("length"), own("pin")], mend: `move pin ${other.id} along the joint` },
      })),
    ];
  });
  const middle = coreWidth / 2 - pin.depth;
  return [
    ...round,
    {
      ...{ left: 2 * middle, between: `the pins of the ${given.place.side} wing and those of the other` },
      ...{ ids: [own("pin.depth"), "core.width"], mend: lowerTo(own("pin.depth"), (coreWidth - wall) / 2) },
    },
  ];
});

/** How much nearer a pin comes to the wing's front or back for each mm of its depth; 1 where it runs level, so that no depth mends it. */
function slant({ place }: WingPinWallsInput): number {
  const { frame, joint } = placeOfWing(place);
  const lean = Math.abs(dot(frame.w, joint.normal));
  return lean < 0.01 ? 1 : lean;
}

/** What of a wing's outline is cut: all but its first edge, the joint. */
function cutEdges({ points }: Path): Path {
  return { closed: false, points: [...points.slice(1), { ...points[0]!, bulge: 0 }] };
}

/** The least wood of the wing between a pin's hole and what is cut of its outline; negative outside of that. */
function leastToEdge(
  { place: input, path, pin }: WingPinWallsInput,
  cut: Path,
  at: WingJoint["pins"][number]["at"],
): number {
  const place = placeOfWing(input);
  const from = between(place.frame.origin, at);
  const distances = Array.from({ length: looks }, (_, i) => {
    const deep = ((i + 1) / looks) * pin.depth;
    const { normal } = place.joint;
    const point = { x: from.x + deep * normal.x, y: from.y + deep * normal.y, z: from.z + deep * normal.z };
    const flat = { x: dot(point, place.frame.u), y: sign(input.side) * dot(point, place.frame.v) };
    const nearest = nearestPlace(cut, flat);
    const away = nearest.kind === "ok" ? nearest.distance : 0;
    return whereabouts(path, flat) === "inside" ? away : -away;
  });
  return Math.min(...distances) - pin.diameter / 2;
}
