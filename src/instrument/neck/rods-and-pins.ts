import { extentsOf } from "../../geometry/measure.ts";
import type { Path } from "../../geometry/path.ts";
import { dimensionOf, type Spec } from "../../order/spec.ts";
import type { Getters } from "../../step/lazy.ts";
import type { Store } from "../../step/store.ts";
import type { CoreFrame } from "../core/frame.ts";
import { onHead } from "../head/frame.ts";
import type { Head } from "../head/head.ts";
import type { Wall } from "../wall.ts";
import type { Joinery } from "./joinery.ts";
import {
  type Obstacle,
  pocketObstacles,
  rodObstacles,
  tunerObstacles,
  wingPinObstacles,
} from "./obstacles.ts";
import { pinWalls } from "./pin-walls.ts";
import { neckPins, type Pin } from "./pins.ts";
import type { ProfileInput } from "./profile.ts";
import { rodWalls } from "./rod-walls.ts";
import { neckRods, type Rod } from "./rods.ts";

/** The neck's rods and index pins, and the wood round them; mm. */
export type RodsAndPins = {
  readonly neckRods: readonly Rod[];
  readonly neckPins: readonly Pin[];
  readonly neckRodWalls: readonly Wall[];
  /** The tuners' holes as they project into the plan. */
  readonly tunerPlaces: readonly { readonly x: number; readonly y: number }[];
  /** What index pins must stay clear of. */
  readonly neckObstacles: readonly Obstacle[];
  readonly neckPinWalls: readonly Wall[];
};

/** What rods and pins rest on: the neck's outlines, the tuners, and their own answers. */
type Rests = Pick<Head, "tuners" | "tunerHole"> &
  Pick<Joinery, "corePockets" | "wingPinHoles"> &
  RodsAndPins & { readonly neckProfile: ProfileInput; readonly core: CoreFrame };

/** How each answer about rods and pins is worked out; `own` is asked only then. */
export function rodAndPinGetters(spec: Spec, store: Store, own: () => Rests): Getters<RodsAndPins> {
  const of = (id: string) => dimensionOf(spec, id);
  return {
    neckRods: () =>
      store.answer(neckRods, {
        ...{ count: of("rod.count"), width: of("rod.width"), depth: of("rod.depth") },
        ...{ start: of("rod.start"), length: of("rod.length"), offset: of("rod.offset") },
      }).value,
    neckRodWalls: () => {
      const rods = own().neckRods.map(({ path, ...sunk }) => sunk);
      return store.answer(rodWalls, { profile: own().neckProfile, rods, wall: of("rod.wall") }).value;
    },
    tunerPlaces: () => {
      const face = { nutThickness: of("nut.thickness"), angle: of("head.angle") };
      return own().tuners.tuners.map(({ along, y }) => ({ x: onHead(face, along, 0).x, y }));
    },
    neckObstacles: () => [
      ...rodObstacles(own().neckRods),
      ...tunerObstacles(own().tunerPlaces, own().tunerHole.back),
      ...pocketObstacles(own().corePockets, own().core),
      ...wingPinObstacles(own().wingPinHoles, of("pin.depth") + of("pin.wall")),
    ],
    neckPinWalls: () => {
      const { neckProfile: profile, neckPins: pins, neckObstacles: obstacles } = own();
      return store.answer(pinWalls, {
        ...{ profile, pins, obstacles: obstacles.filter(({ path }) => isNear(path, pins)) },
        ...{ allowance: of("neck.allowance.end"), wall: of("pin.wall") },
      }).value;
    },
    neckPins: () => {
      const { minX, maxX } = extentsOf([own().neckProfile.plan])!;
      const underBoard = (id: "upper" | "lower") => ({
        ...{ at: of(`pin.${id}.at`), offset: of(`pin.${id}.offset`), diameter: of(`pin.${id}`) },
      });
      return store.answer(neckPins, {
        ...{ minX, maxX, allowance: of("neck.allowance.end"), head: of("pin.head"), tail: of("pin.tail") },
        ...{ upper: underBoard("upper"), lower: underBoard("lower"), depth: of("pin.depth") },
      }).value;
    },
  };
}

/** What is farther from a pin than this, mm, is in nobody's way, and isn't looked at again each time that it moves a little. */
const far = 40;

function isNear(path: Path, pins: readonly Pin[]): boolean {
  const { minX, maxX } = extentsOf([path])!;
  return pins.some(({ x, diameter }) => Math.max(minX - x, x - maxX) < far + diameter / 2);
}
