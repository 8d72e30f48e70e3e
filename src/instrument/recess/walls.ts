import type { Path } from "../../geometry/path.ts";
import { depthsIn } from "../../geometry/path-measures/depth-in.ts";
import { leastOver } from "../../geometry/path-measures/paths-apart.ts";
import type { Point } from "../../geometry/point.ts";
import { dot } from "../../geometry/solid/vec3.ts";
import { step } from "../../step/step.ts";
import type { Drilled } from "../drilled.ts";
import { raiseTo, type Wall } from "../wall.ts";
import { type Looked, looked, uprightsApart, uprightToRod } from "./gaps.ts";
import type { Ground, Upright } from "./ground.ts";

/** What a recess takes out of its part: where, for its floor's sake how deep, and what leads out of it. */
export type SunkRecess = {
  readonly id: string;
  readonly depth: number;
  readonly uprights: readonly Upright[];
  /** Its outline where it enters the face. */
  readonly outermost: Path;
  readonly out: Drilled | null;
};

/** A recess and the part that it is sunk into, of which only what lies near it is told, the recesses before it that lie near, and the least wood wanted, mm. */
export type RecessWallsInput = {
  readonly ground: Ground;
  readonly recess: SunkRecess;
  readonly before: readonly SunkRecess[];
  readonly wall: number;
};

/** A recess, and all of it ready to be looked at often. */
export type SeenRecess = Omit<SunkRecess, "uprights"> & { readonly uprights: readonly Looked[] };

/** A part round one recess, ready to be looked at often; `inside` is how deep a place lies from its rim. */
type Seen = Pick<RecessWallsInput, "ground" | "wall"> & {
  readonly round: readonly Looked[];
  readonly inside: (place: Point) => number;
};

/** A wall of a recess or of a wire's bore, and the place in the design that it is told at. */
export type RecessWall = Wall & { readonly of: string };

/** Makes a recess ready to be looked at often. */
export function seenRecess(recess: SunkRecess): SeenRecess {
  return { ...recess, uprights: recess.uprights.map(looked) };
}

/** Nothing is to be moved for a wall that is thick enough. */
export function toMend(walls: readonly RecessWall[], least: number): RecessWall[] {
  return walls.map((wall) => (wall.left < least - 1e-6 ? wall : { ...wall, mend: "leave it" }));
}

/**
 * The wood left round a recess of a part: to its faces, its rim less what the eased edges take, its joint, to pins and all else that is
 * sunk into it, and to the recesses before it.
 */
export const recessWalls = step("recess.walls", 2, (given: RecessWallsInput): readonly RecessWall[] => {
  const { ground, wall } = given;
  const inside = depthsIn(ground.outline, ground.rim);
  const seen: Seen = { ground, wall, inside, round: ground.uprights.map(looked) };
  const recess = seenRecess(given.recess);
  const walls = [
    ...[...faces(seen, recess), ...rim(seen, recess), ...joint(seen, recess), ...others(seen, recess)],
    ...given.before.map((other) => betweenRecesses(seen, recess, seenRecess(other))),
  ];
  return toMend(walls, wall);
});

/** How far something has to be moved, so that it is far enough. */
export const told = (by: number) => `${Math.ceil(by * 100 - 1e-6) / 100} mm`;

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
