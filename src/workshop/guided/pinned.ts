import type { Path } from "../../geometry/path.ts";
import { distanceTo } from "../../geometry/path-measures/segment-places.ts";
import type { Point } from "../../geometry/point.ts";
import { segmentLength, segmentsOf } from "../../geometry/segment.ts";
import type { Shop } from "../../order/shop.ts";
import { step } from "../../step/step.ts";
import { baseFrame, inBase, onBase } from "./base-frame.ts";
import { handholds, hangAt } from "./handholds.ts";
import { type FixtureHole, type Holding, sweptMargin } from "./holding.ts";
import { holdingSizes } from "./holding-sizes.ts";
import { placeClamps } from "./place-clamps.ts";

/**
 * What a base has to hold that work stands on by pins and screws, mm: the line that it begins at and a place on the work's side of it, the finished edges
 * led on at both ends, how far it reaches, the index pins, the places that each screw may stand at and its diameter, the shop's clamps where they
 * press too, how many hold-downs the length asks for, what to scribe, how far handholds lie from the line (null where nobody
 * holds the fixture) and how far a hand-held router's base reaches past the cutter: screws' heads are sunk, so that it slides over them.
 */
export type PinnedInput = {
  readonly base: { readonly from: Point; readonly to: Point };
  readonly inside: Point;
  readonly led: Path;
  readonly reach: number;
  readonly pins: readonly { readonly at: Point; readonly diameter: number }[];
  readonly screws: readonly (readonly Point[])[];
  readonly screw: { readonly what: "screw" | "bolt"; readonly diameter: number };
  readonly clamps: Shop["clamps"];
  readonly wanted: number;
  readonly marks: readonly Path[];
  readonly hands: number | null;
  readonly past: number;
};

/** How much wood stays between a screw and a pin, mm (G: default, confirm). */
const between = 3;

/** Work on its index pins: each screw at the first of its places that keeps off the cutter's way and off the pins, then clamps for what is still wanted. */
export const pinnedHolding = step("fixture.pinned", 1, (given: PinnedInput): Holding => {
  const { base, inside, led, reach, pins, screw, wanted, hands, past } = given;
  const frame = baseFrame(base.from, base.to, inside);
  const edges = segmentsOf(led).filter((segment) => segmentLength(segment) > 0);
  const isClear = (place: Point) =>
    distanceTo(edges, place) >= sweptMargin + holdingSizes.spare + screw.diameter / 2 &&
    pins.every(
      ({ at, diameter }) =>
        Math.hypot(at.x - place.x, at.y - place.y) >= (diameter + screw.diameter) / 2 + between,
    );
  const screws = given.screws.flatMap((places) => places.find(isClear) ?? []);
  const more = Math.max(0, wanted - screws.length);
  const whole = Math.hypot(base.to.x - base.from.x, base.to.y - base.from.y);
  const [from, length] = clampedPart(
    screws.map((at) => inBase(frame, at).s),
    whole,
    more,
  );
  const there = { ...frame, origin: onBase(frame, from, 0) };
  const clamps = placeClamps({ frame: there, length, led, clamps: given.clamps, past }, 0, more);
  const grips = hands === null ? [] : handholds(frame, led, hands);
  const hang = hangAt(frame, led, reach);
  return {
    ...{ batten: null, marks: given.marks, clamps, wanted, handholds: grips },
    holes: [
      ...pins.map(({ at, diameter }): FixtureHole => ({ at, diameter, what: `index pin ${diameter}` })),
      ...screws.map((at): FixtureHole => ({ at, ...screw })),
      ...grips.map(({ at }): FixtureHole => ({ at, diameter: holdingSizes.bolt, what: "handhold" })),
      { at: hang, diameter: holdingSizes.hang, what: "hang hole" },
    ],
  };
});

/** How far to either side of its best place a clamp may stand, mm. */
const aside = 40;

/** The part of the line that clamps stand along: all of it, or what evenly divides the length between the outermost screws; where it begins and how long it is, mm. */
function clampedPart(screws: readonly number[], whole: number, count: number): readonly [number, number] {
  if (screws.length < 2 || count === 0) return [0, whole];
  const [low, high] = [Math.min(...screws), Math.max(...screws)];
  const step = (high - low) / (count + 1);
  return [low + step - aside, high - low - 2 * step + 2 * aside];
}
