import type { Path } from "../../geometry/path.ts";
import { distanceTo } from "../../geometry/path-measures/segment-places.ts";
import type { Point } from "../../geometry/point.ts";
import { segmentLength, segmentsOf } from "../../geometry/segment.ts";
import type { Shop } from "../../order/shop.ts";
import { step } from "../../step/step.ts";
import { type BaseFrame, boxOnBase, onBase } from "./base-frame.ts";
import { type ClampRoom, clampRoom } from "./clamp-room.ts";
import { type Handhold, handholds, hangAt } from "./handholds.ts";
import { holdingSizes } from "./holding-sizes.ts";
import { type PlacedClamp, placeClamps } from "./place-clamps.ts";

/**
 * What a fixture's base has to hold, mm: its frame on the joined edge, how long that is, the finished edges led on at both ends, how far the base
 * reaches, how far the joint's back arris stands out from the front one toward the base, where the joint's own pins are along it,
 * the shop's clamps, and how far handholds lie from the joined edge (null where nobody holds the fixture).
 */
export type HoldingInput = {
  readonly frame: BaseFrame;
  readonly length: number;
  readonly led: Path;
  readonly reach: number;
  readonly back: number;
  readonly jointPins: readonly number[];
  readonly clamps: Shop["clamps"];
  readonly hands: number | null;
  /** How far a hand-held router's base reaches past the cutter, 0 where nothing slides over the work. */
  readonly past: number;
};

/** A round hole of a fixture: its middle, the drill's diameter, mm, and what it is for. */
export type FixtureHole = { readonly at: Point; readonly diameter: number; readonly what: string };

/**
 * What holds the work. A batten carries a wing's joint on its face and finds its place by its pins; two index pins of unequal size put it, or the
 * work itself where there is no batten, on the base one way only. `wanted` is how many hold-downs the length asks for; where fewer clamps fit,
 * `clamps` has those that do.
 */
export type Holding = {
  readonly batten: Path | null;
  readonly marks: readonly Path[];
  readonly clamps: readonly PlacedClamp[];
  readonly wanted: number;
  /** Where too few of the shop's clamps fit behind a batten: what would. */
  readonly room?: ClampRoom;
  readonly handholds: readonly Handhold[];
  readonly holes: readonly FixtureHole[];
};

/** How near to the cutter's circle anything that holds may come, mm: clamps, screws, pins and stops (G: default, confirm). */
export const sweptMargin = 6;

/** A hold-down about every so many mm, and never fewer than two (S). */
export const holdDownEvery = 300;

/** Places what holds the work, the batten first, then clamps as far apart as they go, then the handholds at the base's far end. */
export const holding = step("fixture.holding", 1, (given: HoldingInput): Holding => {
  const { frame, length, led, reach, back, jointPins, hands } = given;
  const { batten: deep, pins } = holdingSizes;
  const battenEnd = back + deep;
  const [low, high] = battenEnds(given, back, battenEnd);
  const pinsAt = [low + 0.2 * (high - low), low + 0.8 * (high - low)];
  const wanted = Math.max(2, Math.ceil(length / holdDownEvery));
  const index = pins.map((diameter, i): FixtureHole => {
    const at = onBase(frame, pinsAt[i]!, back + deep / 2);
    return { at, diameter, what: `index pin ${diameter}` };
  });
  const grips = hands === null ? [] : handholds(frame, led, hands);
  const bolts = grips.map(({ at }): FixtureHole => ({ at, diameter: holdingSizes.bolt, what: "handhold" }));
  const hang = hangAt(frame, led, reach);
  const clamps = placeClamps(given, battenEnd, wanted);
  const room = clamps.length < wanted ? clampRoom(given, battenEnd, wanted) : undefined;
  return {
    batten: boxOnBase(frame, low, back, high, battenEnd),
    marks: jointPins
      .filter((s) => s > low && s < high)
      .map((s) => ({
        closed: false,
        points: [onBase(frame, s, back), onBase(frame, s, battenEnd)].map((at) => ({ ...at, bulge: 0 })),
      })),
    ...{ clamps, wanted, handholds: grips, ...(room && { room }) },
    holes: [...index, ...bolts, { at: hang, diameter: holdingSizes.hang, what: "hang hole" }],
  };
});

/** Where a batten begins and ends along the joined edge: as far out as both of its corners there keep off the led edges. */
function battenEnds(
  { frame, length, led }: HoldingInput,
  near: number,
  away: number,
): readonly [number, number] {
  const edges = segmentsOf(led).filter((segment) => segmentLength(segment) > 0);
  const least = sweptMargin + holdingSizes.spare;
  const isClear = (s: number) =>
    [near, away].every((h) => distanceTo(edges, onBase(frame, s, h)) >= least - 1e-9);
  const steps = Array.from({ length: Math.floor(length / 2) }, (_, i) => i);
  const low = steps.find(isClear) ?? 0;
  const high = length - (steps.find((i) => isClear(length - i)) ?? 0);
  return [low, high];
}
