import type { Path } from "../../geometry/path.ts";
import { depthsIn } from "../../geometry/path-measures/depth-in.ts";
import { leastOver } from "../../geometry/path-measures/paths-apart.ts";
import type { Point } from "../../geometry/point.ts";
import { dot } from "../../geometry/solid/vec3.ts";
import { step } from "../../step/step.ts";
import { alongBore, type Drilled } from "../drilled.ts";
import { raiseTo, type Wall } from "../wall.ts";
import { alongRod, type Looked, leastShare, looked, rodsApart, uprightsApart, uprightToRod } from "./gaps.ts";
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

/** A recess, and all of it ready to be looked at often. */
type SeenRecess = Omit<SunkRecess, "uprights"> & { readonly uprights: readonly Looked[] };

/** A part with all that is sunk into it, ready to be looked at often; `inside` is how deep a place lies from its rim. */
type Seen = Omit<RecessWallsInput, "recesses"> & {
  readonly recesses: readonly SeenRecess[];
  readonly round: readonly Looked[];
  readonly inside: (place: Point) => number;
};

/** A wall of a recess or of a wire's bore, and the place in the design that it is told at. */
export type RecessWall = Wall & { readonly of: string };

/**
 * The wood left round each recess and each wire's bore of a part: to its faces, its rim less what the eased edges take, its joint, to pins and all else that is
 * sunk into it, and to each other.
 */
export const recessWalls = step("recess.walls", 1, (given: RecessWallsInput): readonly RecessWall[] => {
  const seen: Seen = {
    ...given,
    round: given.ground.uprights.map(looked),
    recesses: given.recesses.map((recess) => ({ ...recess, uprights: recess.uprights.map(looked) })),
    inside: depthsIn(given.ground.outline, given.ground.rim),
  };
  const { recesses, bores } = seen;
  const walls = [
    ...recesses.flatMap((recess, i) => [
      ...[...faces(seen, recess), ...rim(seen, recess), ...joint(seen, recess), ...others(seen, recess)],
      ...recesses.slice(0, i).map((other) => betweenRecesses(seen, recess, other)),
    ]),
    ...bores.flatMap((bore, i) => boreWalls(seen, bore, bores.slice(0, i))),
    ...recesses.flatMap(({ id, out }) =>
      out === null ? [] : outWalls(seen, `recess ${id}'s way out`, `recess.${id}`, out, [id]),
    ),
  ];
  // Nothing is to be moved for a wall that is thick enough.
  return walls.map((wall) => (wall.left < given.wall - 1e-6 ? wall : { ...wall, mend: "leave it" }));
});

const told = (by: number) => `${Math.ceil(by * 100 - 1e-6) / 100} mm`;

function faces({ ground, wall }: Seen, { id, depth, uprights }: SeenRecess): RecessWall[] {
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

function rim({ ground, wall, inside }: Seen, { id, outermost }: SeenRecess): RecessWall[] {
  const { eased, sides } = ground;
  // What a ledge holds lies inside of it.
  const left = leastOver(outermost, inside) - eased;
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

function joint({ ground, wall }: Seen, { id, uprights }: SeenRecess): RecessWall[] {
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

function others({ ground, round, wall }: Seen, { id, uprights }: SeenRecess): RecessWall[] {
  const walled = (what: string, left: number, ids: readonly string[]): RecessWall => ({
    ...{ of: `recess.${id}`, left, between: `recess ${id} and ${what}`, ids: [...ids, "cover.ledge"] },
    mend: `move recess ${id} away from ${what} by ${told(wall - left)}`,
  });
  return [
    ...round.map((other) =>
      walled(other.what, Math.min(...uprights.map((own) => uprightsApart(own, other))), other.ids),
    ),
    ...ground.rods.map((rod) =>
      walled(rod.what, Math.min(...uprights.map((own) => uprightToRod(own, rod))), rod.ids),
    ),
  ];
}

function betweenRecesses({ wall }: Seen, a: SeenRecess, b: SeenRecess): RecessWall {
  const left = Math.min(...a.uprights.flatMap((one) => b.uprights.map((other) => uprightsApart(one, other))));
  return {
    ...{ of: `recess.${a.id}`, left, between: `recess ${a.id} and recess ${b.id}` },
    ids: ["cover.ledge", "recess.clearance"],
    mend: `move recess ${a.id} or ${b.id} so that they are ${told(wall - left)} further apart`,
  };
}

function boreWalls(given: Seen, { bore, between }: SunkBore, before: readonly SunkBore[]): RecessWall[] {
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
  { ground, round, recesses, wall, inside }: Seen,
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
