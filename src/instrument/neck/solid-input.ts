import { dimensionOf, type Spec } from "../../order/spec.ts";
import type { CoreFrame } from "../core/frame.ts";
import { onHead } from "../head/frame.ts";
import { pegTaper } from "../head/holes.ts";
import type { Tuner } from "../head/tuners.ts";
import type { Sunken } from "../sunken.ts";
import type { CorePocket } from "./core-pockets.ts";
import type { Pin } from "./pins.ts";
import type { ProfileInput } from "./profile.ts";
import { neckStations } from "./profile-input.ts";
import type { Rod } from "./rods.ts";
import type { Hole, NeckSolidInput } from "./solid.ts";
import type { WingPinHole } from "./wing-pin-holes.ts";

type Made = {
  readonly profile: ProfileInput;
  readonly core: CoreFrame;
  readonly tuners: readonly Tuner[];
  readonly rods: readonly Rod[];
  readonly pins: readonly Pin[];
  readonly wingPins: readonly WingPinHole[];
  readonly pockets: readonly CorePocket[];
  readonly sunken: Sunken;
};

/** What the finished neck's solid follows from: its profile, the tuners' holes, the rods' channels, the pins under the board and in its sides, and what is sunk into the core and bored through it. */
export function solidInput(spec: Spec, made: Made): NeckSolidInput {
  const { profile, core, tuners, rods, pins, wingPins, pockets, sunken } = made;
  return {
    ...{ profile, stations: neckStations(spec).map(({ x }) => x), core },
    holes: [
      ...tuners.map((tuner) => tunerHole(spec, tuner)),
      ...[...pins.flatMap(pinHole), ...wingPins.map(({ hole }) => hole)],
    ],
    channels: rods.map(({ path, depth }) => ({ path, depth })),
    pockets: [
      ...pockets.map(({ id, from, path, depth, bore }) => ({ id, from, path, depth, bore })),
      ...sunken.pockets,
    ],
    drilled: sunken.drilled,
    coreDepth: dimensionOf(spec, "core.depth"),
  };
}

/** A tuner's hole, square to the head's face and through it; that of a peg is reamed 1:30 wider toward the back. */
function tunerHole(spec: Spec, { along, y }: Tuner): Hole {
  const of = (id: string) => dimensionOf(spec, id);
  const tilt = (of("head.angle") * Math.PI) / 180;
  const [diameter, depth] = [of("tuner.hole"), of("head.thickness") + 1];
  return {
    at: { ...onHead({ nutThickness: of("nut.thickness"), angle: of("head.angle") }, along, 0), y },
    out: { x: -Math.sin(tilt), y: 0, z: Math.cos(tilt) },
    ...{ diameter, depth, bottom: spec.tuners === "pegs" ? diameter + depth * pegTaper : diameter },
  };
}

/** The hole of an index pin under the board; those in waste are not in the finished neck. */
function pinHole({ x, y, diameter, depth }: Pin): Hole[] {
  if (depth === "through") return [];
  return [{ at: { x, y, z: 0 }, out: { x: 0, y: 0, z: 1 }, diameter, depth, bottom: diameter }];
}
