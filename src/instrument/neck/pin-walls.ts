import { circle } from "../../geometry/circle.ts";
import type { Path } from "../../geometry/path.ts";
import { depthIn } from "../../geometry/path-measures/depth-in.ts";
import { step } from "../../step/step.ts";
import { greatest, lowerTo, raiseTo, type Wall } from "../wall.ts";
import type { Obstacle } from "./obstacles.ts";
import type { Pin } from "./pins.ts";
import { type ProfileInput, profileOf } from "./profile.ts";
import { placesAlong, type Sunk, woodAt } from "./wood-round.ts";

/** The pins in their neck, with all that they must stay clear of and the least wood wanted; `allowance` as the blank has it, mm. */
export type PinWallsInput = {
  readonly profile: ProfileInput;
  readonly pins: readonly Pin[];
  readonly obstacles: readonly Obstacle[];
  readonly allowance: number;
  readonly wall: number;
};

/** The wood that is left between each index pin's hole and what lies round it: the ends of neck and blank, or back, side and obstacles. */
export const pinWalls = step("neck.pin-walls", 1, (given: PinWallsInput): readonly Wall[] => {
  return given.pins.flatMap((pin) =>
    pin.depth === "through" ? wasteWalls(given, pin) : boardWalls(given, pin),
  );
});

/** A hole's wood to an outline that it must not come near: from inside it there is none. */
function woodTo(path: Path, { x, y, diameter }: Pin): number {
  return -depthIn(path, { x, y }) - diameter / 2;
}

function wasteWalls({ profile, allowance, obstacles, wall }: PinWallsInput, pin: Pin): Wall[] {
  const diameter = `pin.${pin.id}`;
  const ids = ["neck.allowance.end", diameter];
  const mend = `${raiseTo("neck.allowance.end", pin.diameter + 2 * wall)} or ${lowerTo(diameter, allowance - 2 * wall)}`;
  const named = (what: string) => ({ between: `the pin past the ${pin.id} and ${what}`, ids, mend });
  return [
    { left: allowance / 2 - pin.diameter / 2, ...named("the blank's end") },
    { left: woodTo(profile.plan, pin), ...named("the neck's end") },
    ...obstacles.map(({ what, path }) => ({ left: woodTo(path, pin), ...named(what) })),
  ];
}

const sunkOf = ({ x, y, diameter, depth }: Pin): Sunk => ({
  ...{ y, width: diameter, depth: Number(depth), start: x - diameter / 2, length: diameter },
});

function boardWalls(given: PinWallsInput, pin: Pin): Wall[] {
  const { wall } = given;
  const others = given.pins
    .filter(({ id, depth }) => depth !== "through" && id !== pin.id)
    .map(({ id, x, y, diameter }): Obstacle => {
      const ids = [`pin.${id}.at`, `pin.${id}.offset`, `pin.${id}`];
      return { what: `the ${id} pin`, path: circle({ x, y }, diameter / 2), ids, outward: null };
    });
  const obstacles = [...given.obstacles, ...others];
  const at = profileOf(given.profile);
  const woodRound = (moved: Pin) => {
    const sunk = sunkOf(moved);
    return Math.min(...placesAlong(at, sunk).map((place) => woodAt(place, sunk)));
  };
  const clear = (moved: Pin) =>
    obstacles.every(({ path }) => woodTo(path, moved) >= wall) && woodRound(moved) >= wall;
  const [offset, along] = [`pin.${pin.id}.offset`, `pin.${pin.id}.at`];
  const walls = obstacles.map(({ what, path, ids: itsOwn, outward }): Wall => {
    const left = woodTo(path, pin);
    const ids = [offset, along, `pin.${pin.id}`, ...itsOwn];
    const mend =
      left < wall ? [...givingWay(pin, outward, wall), ...moves(pin, clear)].join(", or ") : "leave it";
    return { left, between: `the ${pin.id} pin and ${what}`, ids, mend };
  });
  const left = woodRound(pin);
  const shallower = () => {
    const depth = greatest(0, Number(pin.depth), (value) => woodRound({ ...pin, depth: value }) >= wall);
    return depth < 1 ? moves(pin, clear).join(", or ") : lowerTo("pin.depth", depth);
  };
  const between = `the ${pin.id} pin and the neck's back or side`;
  const ids = ["pin.depth", offset, `pin.${pin.id}`];
  return [...walls, { left, between, ids, mend: left < wall ? shallower() : "leave it" }];
}

/** What an obstacle can do for a pin that stands inward of it. */
function givingWay(pin: Pin, outward: Obstacle["outward"], wall: number): string[] {
  if (outward === null || Math.abs(pin.y) >= outward.at) return [];
  return [raiseTo(outward.id, Math.abs(pin.y) + pin.diameter / 2 + wall + outward.half)];
}

/** How far a pin is moved to look for a place that is clear, and in what steps, mm. */
const search = { reach: 40, step: 0.1 };

/** The nearest places across and along the neck where a pin is clear of everything, if there are any. */
function moves(pin: Pin, clear: (moved: Pin) => boolean): string[] {
  const count = Math.round(search.reach / search.step);
  const across = nearest(pin.y, count, (y) => clear({ ...pin, y }));
  const along = nearest(pin.x, count, (x) => x > pin.diameter / 2 && clear({ ...pin, x }));
  return [...told(`pin.${pin.id}.offset`, pin.y, across), ...told(`pin.${pin.id}.at`, pin.x, along)];
}

function nearest(from: number, count: number, holds: (value: number) => boolean): number | undefined {
  const down = Math.floor(from / search.step + 1e-6);
  const up = Math.ceil(from / search.step - 1e-6);
  for (let i = 1; i <= count; i++) {
    for (const value of [(up + i) * search.step, (down - i) * search.step]) if (holds(value)) return value;
  }
  return undefined;
}

function told(id: string, from: number, to: number | undefined): string[] {
  if (to === undefined) return [];
  return [`${to > from ? "raise" : "lower"} ${id} to ${Math.round(to * 10) / 10} mm`];
}
