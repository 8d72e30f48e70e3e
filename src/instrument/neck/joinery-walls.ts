import { extentsApart, extentsOf } from "../../geometry/measure.ts";
import { depthIn } from "../../geometry/path-measures/depth-in.ts";
import { type Frame, fromFrame, upright } from "../../geometry/solid/frame.ts";
import { between, dot, type Vec3 } from "../../geometry/solid/vec3.ts";
import { step } from "../../step/step.ts";
import type { CoreFrame } from "../core/frame.ts";
import { coreAxes } from "../core/from-core.ts";
import { lowerTo, type Wall } from "../wall.ts";
import type { CorePocket } from "./core-pockets.ts";
import type { Rod } from "./rods.ts";
import type { WingPinHole } from "./wing-pin-holes.ts";

/** What is cut into the neck's core, which must not meet; mm. `coreDepth` is the core's, `wall` the least wood wanted. */
export type JoineryWallsInput = {
  readonly pockets: readonly Pick<CorePocket, "what" | "path" | "depth" | "depthId">[];
  readonly rods: readonly Pick<Rod, "path" | "depth">[];
  readonly pins: readonly WingPinHole[];
  readonly core: CoreFrame;
  readonly coreDepth: number;
  readonly wall: number;
};

/** Something sunk square from a face, in that face's frame. */
type Prism = Pick<CorePocket, "what" | "path" | "depth" | "depthId"> & { readonly frame: Frame };

/** At how many places along a pin's axis its distance is taken: its holes are 20 deep, and a circle curves little over half of one. */
const looks = 40;

/**
 * The wood left under what is sunk into the core, and between that and the wings' pins, which come from the sides. A pin's hole is taken as ending
 * round, so that there is never less wood than said.
 */
export const joineryWalls = step("neck.joinery-walls", 1, (given: JoineryWallsInput): readonly Wall[] => {
  const { pockets, rods, pins, core, coreDepth, wall } = given;
  const [inCore, inNeck] = [coreAxes(core), upright];
  const sunk: Prism[] = [
    ...pockets.map((pocket) => ({ ...pocket, frame: inCore })),
    ...rods.map((rod) => ({ ...rod, what: "a rod's channel", depthId: "rod.depth", frame: inNeck })),
  ];
  return [
    ...pockets.map(({ what, depth, depthId }): Wall => {
      return {
        ...{ left: coreDepth - depth, between: `${what} and the core's back`, ids: [depthId, "core.depth"] },
        mend: lowerTo(depthId, coreDepth - wall),
      };
    }),
    ...pins.flatMap((pin) => sunk.map((prism) => betweenPin(pin, prism, wall))),
  ];
});

function betweenPin({ side, id, hole }: WingPinHole, prism: Prism, wall: number): Wall {
  const radius = hole.diameter / 2;
  const along = Array.from({ length: looks + 1 }, (_, i) => {
    const deep = (i / looks) * hole.depth;
    const { at, out } = hole;
    return own(prism.frame, { x: at.x - deep * out.x, y: at.y - deep * out.y, z: at.z - deep * out.z });
  });
  // The two ends and the outline's box are enough to go by where they are far apart.
  const axis = { closed: false, points: [along[0]!, along.at(-1)!].map(({ x, y }) => ({ x, y, bulge: 0 })) };
  const boxes = extentsApart(extentsOf([prism.path])!, extentsOf([axis])!);
  const nearest = boxes > far ? boxes : Math.min(...along.map((place) => outside(prism, place)));
  const left = nearest - radius;
  const highest = Math.max(...along.map(({ z }) => z)) + radius;
  const shallow = -highest - wall;
  const move = `move pin ${id} of the ${side} wing`;
  return {
    ...{ left, between: `pin ${id} of the ${side} wing and ${prism.what}` },
    ids: [prism.depthId, `wing.${side}.pin.depth`, `wing.${side}.pin`, `wing.${side}.start`],
    mend: shallow > 0 ? `${lowerTo(prism.depthId, shallow)} or ${move}` : move,
  };
}

/** What is farther apart than this in plan, mm, meets nowhere: `check` asks it of every order. */
const far = 20;

function own(frame: Frame, place: Vec3): Vec3 {
  const away = between(frame.origin, place);
  return { x: dot(away, frame.u), y: dot(away, frame.v), z: dot(away, frame.w) };
}

/** How far a place lies outside of what is sunk, mm; in it, how far it would have to go, negative. */
function outside({ path, depth }: Prism, { x, y, z }: Vec3): number {
  const within = depthIn(path, { x, y });
  const under = -depth - z;
  if (within > 0) return under > 0 ? under : Math.max(under, -within);
  return Math.hypot(within, Math.max(0, under));
}

/** A pin's hole from the front, as wide as it is, from the core's side to its bottom; and how high its top lies, mm. */
export function fromFront({ hole }: WingPinHole) {
  const { at, out, depth, diameter } = hole;
  const end = fromFrame({ ...upright, origin: at }, -depth * out.x, -depth * out.y, -depth * out.z);
  const [dx, dy] = [end.x - at.x, end.y - at.y];
  const length = Math.hypot(dx, dy);
  const [nx, ny] = [((-dy / length) * diameter) / 2, ((dx / length) * diameter) / 2];
  const corners = [
    { x: at.x - nx, y: at.y - ny, bulge: 0 },
    { x: end.x - nx, y: end.y - ny, bulge: 0 },
    { x: end.x + nx, y: end.y + ny, bulge: 0 },
    { x: at.x + nx, y: at.y + ny, bulge: 0 },
  ];
  return { path: { closed: true, points: corners }, top: Math.max(at.z, end.z) + diameter / 2 };
}
