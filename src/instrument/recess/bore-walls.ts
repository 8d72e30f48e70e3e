import { depthsIn } from "../../geometry/path-measures/depth-in.ts";
import type { Point } from "../../geometry/point.ts";
import { step } from "../../step/step.ts";
import { alongBore, type Drilled } from "../drilled.ts";
import { alongRod, type Looked, leastShare, looked, rodsApart, uprightToRod } from "./gaps.ts";
import type { Ground, Rod } from "./ground.ts";
import { type RecessWall, type SeenRecess, type SunkRecess, seenRecess, told, toMend } from "./walls.ts";

/** What a bore is called in a message, what of the design it belongs to, and the recesses that it joins. */
export type NamedBore = {
  readonly named: string;
  readonly of: string;
  readonly bore: Drilled;
  readonly joins: readonly string[];
};

/** A bore and its part, of which only what lies near it is told, and the least wood wanted, mm. */
export type BoreWallsInput = NamedBore & {
  readonly ground: Ground;
  readonly recesses: readonly SunkRecess[];
  readonly wall: number;
};

/** A part round one bore, ready to be looked at often; `inside` is how deep a place lies from its rim. */
type Seen = NamedBore &
  Pick<BoreWallsInput, "ground" | "wall"> & {
    readonly recesses: readonly SeenRecess[];
    readonly round: readonly Looked[];
    readonly inside: (place: Point) => number;
  };

/** The wood left round a wire's bore or a recess's way out in a part: to its faces and its rim, and to all that is sunk into it. */
export const boreWalls = step("recess.bore-walls", 1, (given: BoreWallsInput): readonly RecessWall[] => {
  const { ground, wall } = given;
  const inside = depthsIn(ground.outline, ground.rim);
  const round = ground.uprights.map(looked);
  const walls = outWalls({ ...given, inside, round, recesses: given.recesses.map(seenRecess) });
  return toMend(walls, wall);
});

/** The wood between two bores of a part, of the first. */
export function betweenBores(bore: Drilled, other: Drilled, { thick }: Ground, wall: number): RecessWall {
  const left = Math.min(...rodsOf(bore).flatMap((one) => rodsOf(other).map((two) => rodsApart(one, two))));
  return {
    ...{ of: `bore.${bore.id}`, left, between: `bore ${bore.id} and bore ${other.id}`, ids: [thick] },
    mend: `change the height of bore ${bore.id} by ${told(wall - left)}`,
  };
}

/** The stretches of a bore that run through wood, as straight holes. */
export function rodsOf({ id, diameter, wood, ...axis }: Drilled): Rod[] {
  return wood.map(([from, to]) => ({
    ...{ what: `bore ${id}`, diameter, ids: [] },
    ...{ from: alongBore(axis, from), to: alongBore(axis, to) },
  }));
}

/** The wood round a bore in its part: to front and back, to the rim unless it comes out there, and to all that it doesn't lead to. */
function outWalls(seen: Seen): RecessWall[] {
  const { ground, round, recesses, wall, inside, named, of, bore, joins } = seen;
  const rods = rodsOf(bore);
  const radius = bore.diameter / 2;
  const { thickness, thick } = ground;
  const squareOn = Math.abs(bore.from.x - bore.to.x) + Math.abs(bore.from.y - bore.to.y) < 1e-9;
  const heights = rods.flatMap(({ from, to }) => [from.z, to.z]);
  const front = -Math.max(...heights) - radius;
  const back = thickness + Math.min(...heights) - radius;
  const all = (what: string, left: number, ids: readonly string[], mend: string): RecessWall => ({
    ...{ of, left, between: `${named} and ${what}`, ids: [...ids, thick], mend },
  });
  const away = (left: number) => `change its height by ${told(wall - left)} or move a recess that it joins`;
  const skipped = (what: string) => joins.includes("bridge") && what === "the bridge's cradle";
  const sunk = [
    ...round
      .filter(({ what }) => what !== "the core's room" && !skipped(what))
      .map((one) => ({
        what: one.what,
        ids: one.ids,
        left: Math.min(...rods.map((rod) => uprightToRod(one, rod))),
      })),
    ...recesses
      .filter(({ id }) => !joins.includes(id))
      .map(({ id, uprights }) => ({
        ...{ what: `recess ${id}`, ids: ["cover.ledge"] },
        left: Math.min(...uprights.flatMap((one) => rods.map((rod) => uprightToRod(one, rod)))),
      })),
    ...ground.rods.map((other) => ({
      ...{ what: other.what, ids: other.ids, left: Math.min(...rods.map((rod) => rodsApart(rod, other))) },
    })),
  ];
  const faces = squareOn
    ? []
    : [
        ...(joins.includes("bridge")
          ? []
          : [all(`the front of the ${partName(ground)}`, front, [], away(front))]),
        all(`the back of the ${partName(ground)}`, back, [], away(back)),
      ];
  const edge = named.startsWith("bore") ? rimLeft(ground, inside, rods) : null;
  return [
    ...faces,
    ...(edge === null ? [] : [all(ground.sides, edge - radius, ground.ids, away(edge - radius))]),
    ...sunk.map(({ what, left, ids }) => all(what, left, ids, away(left))),
  ];
}

function partName({ part }: Ground): string {
  return part === "neck" ? "core" : part === "body" ? "body" : `${part.slice(5)} wing`;
}

/** The least way from a wire's axis to its part's rim; a way out ends there, and the core's sides and ends are none of it. */
function rimLeft({ part }: Ground, inside: (place: Point) => number, rods: readonly Rod[]): number | null {
  if (part === "neck") return null;
  return Math.min(...rods.map((rod) => leastShare((share) => inside(alongRod(rod, share)))));
}
