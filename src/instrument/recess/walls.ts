import type { Path } from "../../geometry/path.ts";
import { depthsIn } from "../../geometry/path-measures/depth-in.ts";
import { leastOver } from "../../geometry/path-measures/paths-apart.ts";
import { dot } from "../../geometry/solid/vec3.ts";
import { step } from "../../step/step.ts";
import { alongBore, type Drilled } from "../drilled.ts";
import { raiseTo, type Wall } from "../wall.ts";
import { alongRod, leastShare, rodsApart, uprightsApart, uprightToRod } from "./gaps.ts";
import type { Ground, Rod, Upright } from "./ground.ts";

/** What a recess takes out of its part: where, for its floor's sake how deep, and what leads out of it. */
export type SunkRecess = {
  readonly id: string;
  readonly depth: number;
  readonly uprights: readonly Upright[];
  /** Its outline where it enters the face. */
  readonly outermost: Path;
  readonly out: Drilled | null;
};

/** A wire's bore in one part, and the recesses that it joins. */
export type SunkBore = { readonly bore: Drilled; readonly between: readonly string[] };

/** One part with all that is sunk into it for the electronics, and the least wood wanted, mm. */
export type RecessWallsInput = {
  readonly ground: Ground;
  readonly recesses: readonly SunkRecess[];
  readonly bores: readonly SunkBore[];
  readonly wall: number;
};

/** A wall of a recess or of a wire's bore, and the place in the design that it is told at. */
export type RecessWall = Wall & { readonly of: string };

/**
 * The wood left round each recess and each wire's bore of a part: to its faces, its rim less what the eased edges take, its joint, to pins and all else that is
 * sunk into it, and to each other.
 */
export const recessWalls = step("recess.walls", 1, (given: RecessWallsInput): readonly RecessWall[] => {
  const { recesses, bores } = given;
  const walls = [
    ...recesses.flatMap((recess, i) => [
      ...[...faces(given, recess), ...rim(given, recess), ...joint(given, recess), ...others(given, recess)],
      ...recesses.slice(0, i).map((other) => betweenRecesses(given, recess, other)),
    ]),
    ...bores.flatMap((bore, i) => boreWalls(given, bore, bores.slice(0, i))),
    ...recesses.flatMap(({ id, out }) =>
      out === null ? [] : outWalls(given, `recess ${id}'s way out`, `recess.${id}`, out, [id]),
    ),
  ];
  // Nothing is to be moved for a wall that is thick enough.
  return walls.map((wall) => (wall.left < given.wall - 1e-6 ? wall : { ...wall, mend: "leave it" }));
});

const told = (by: number) => `${Math.ceil(by * 100 - 1e-6) / 100} mm`;

function faces({ ground, wall }: RecessWallsInput, { id, depth, uprights }: SunkRecess): RecessWall[] {
  const { thickness, thick } = ground;
  // What goes square through the face opposite is no wall of it.
  const others = uprights.slice(1).filter(({ low, high }) => low > -thickness || high < 0);
  const left = Math.min(
    thickness - depth,
    ...others.map(({ low, high }) => Math.max(low + thickness, -high)),
  );
  const ids = [thick, "recess.clearance", "cover.thickness", "cover.pilot.depth"];
  return [
    {
      ...{ of: `recess.${id}`, left, between: `recess ${id} and the face opposite`, ids },
      mend: `${raiseTo(thick, thickness + wall - left)}, or choose a thinner item`,
    },
  ];
}

function rim({ ground, wall }: RecessWallsInput, { id, outermost }: SunkRecess): RecessWall[] {
  const { outline, rim: edge, eased, sides } = ground;
  // What a ledge holds lies inside of it.
  const left = leastOver(outermost, depthsIn(outline, edge)) - eased;
  return [
    {
      ...{
        of: `recess.${id}`,
        left,
        between: `recess ${id} and ${sides}`,
        ids: [...ground.ids, "cover.ledge"],
      },
      mend: `move recess ${id} inward by ${told(wall - left)} or turn it`,
    },
  ];
}

function joint({ ground, wall }: RecessWallsInput, { id, uprights }: SunkRecess): RecessWall[] {
  const normal = ground.joint;
  if (normal === null) return [];
  const left = Math.min(
    ...uprights.flatMap(({ path, low, high }) =>
      [low, high].map((z) => leastOver(path, ({ x, y }) => dot(normal, { x, y, z }))),
    ),
  );
  const ids = [ground.thick, "cover.ledge"];
  return [
    {
      ...{ of: `recess.${id}`, left, between: `recess ${id} and the joint`, ids },
      mend: `move recess ${id} out by ${told(wall - left)}`,
    },
  ];
}

function others({ ground, wall }: RecessWallsInput, { id, uprights }: SunkRecess): RecessWall[] {
  const walled = (what: string, left: number, ids: readonly string[]): RecessWall => ({
    ...{ of: `recess.${id}`, left, between: `recess ${id} and ${what}`, ids: [...ids, "cover.ledge"] },
    mend: `move recess ${id} away from ${what} by ${told(wall - left)}`,
  });
  return [
    ...ground.uprights.map((other) =>
      walled(other.what, Math.min(...uprights.map((own) => uprightsApart(own, other))), other.ids),
    ),
    ...ground.rods.map((rod) =>
      walled(rod.what, Math.min(...uprights.map((own) => uprightToRod(own, rod))), rod.ids),
    ),
  ];
}

function betweenRecesses({ wall }: RecessWallsInput, a: SunkRecess, b: SunkRecess): RecessWall {
  const left = Math.min(...a.uprights.flatMap((one) => b.uprights.map((other) => uprightsApart(one, other))));
  return {
    ...{ of: `recess.${a.id}`, left, between: `recess ${a.id} and recess ${b.id}` },
    ids: ["cover.ledge", "recess.clearance"],
    mend: `move recess ${a.id} or ${b.id} so that they are ${told(wall - left)} further apart`,
  };
}

function boreWalls(
  given: RecessWallsInput,
  { bore, between }: SunkBore,
  before: readonly SunkBore[],
): RecessWall[] {
  const place = `bore.${bore.id}`;
  const apart = before.flatMap((other): RecessWall[] => {
    // Two that begin in one recess meet there.
    if (other.between.some((one) => one !== "bridge" && between.includes(one))) return [];
    const left = Math.min(
      ...rodsOf(bore).flatMap((one) => rodsOf(other.bore).map((two) => rodsApart(one, two))),
    );
    return [
      {
        ...{
          of: place,
          left,
          between: `bore ${bore.id} and bore ${other.bore.id}`,
          ids: [given.ground.thick],
        },
        mend: `change the height of bore ${bore.id} by ${told(given.wall - left)}`,
      },
    ];
  });
  return [...outWalls(given, `bore ${bore.id}`, place, bore, between), ...apart];
}

function rodsOf({ id, diameter, wood, ...axis }: Drilled): Rod[] {
  return wood.map(([from, to]) => ({
    ...{ what: `bore ${id}`, diameter, ids: [] },
    ...{ from: alongBore(axis, from), to: alongBore(axis, to) },
  }));
}

/** The wood round a bore in its part: to front and back, to the rim unless it comes out there, and to all that it doesn't lead to. */
function outWalls(
  { ground, recesses, wall }: RecessWallsInput,
  named: string,
  of: string,
  bore: Drilled,
  joins: readonly string[],
): RecessWall[] {
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
    ...ground.uprights
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
  const edge = rimLeft(ground, rods, named.startsWith("bore"));
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
function rimLeft({ part, outline, rim: edge }: Ground, rods: readonly Rod[], asked: boolean): number | null {
  if (!asked || part === "neck") return null;
  const inside = depthsIn(outline, edge);
  return Math.min(...rods.map((rod) => leastShare((share) => inside(alongRod(rod, share)))));
}
