import { extentsOf } from "../../geometry/measure.ts";
import type { Path } from "../../geometry/path.ts";
import { nearestPlace } from "../../geometry/path-measures/nearest-place.ts";
import { whereabouts } from "../../geometry/path-measures/winding.ts";
import { step } from "../../step/step.ts";
import { type CoreFrame, frontAt } from "../core/frame.ts";
import { coreAxes, fromCore } from "../core/from-core.ts";
import { type CoreWidth, coreHalf } from "../core/width.ts";
import { placesOn } from "../fingerboard/places-on.ts";
import { lowerTo, type Wall } from "../wall.ts";
import type { Sunk } from "./sunk.ts";

/**
 * What is sunk under the bridge in its core, and all else that is sunk there: `others` by their outlines from the front of the
 * instrument and their depth under z = 0. Lengths in mm; the core ends at x = `end`; `wall` is the least wood wanted.
 */
export type SunkWallsInput = {
  readonly sunk: readonly Sunk[];
  readonly core: CoreFrame;
  readonly width: CoreWidth;
  readonly depth: number;
  readonly end: number;
  readonly others: readonly {
    readonly what: string;
    readonly path: Path;
    readonly depth: number | "through";
    readonly ids: readonly string[];
  }[];
  readonly wall: number;
};

/** The wood left round what is sunk into the core under the bridge: beside it, under it, to the core's two ends, and to rods and pins. */
export const bridgeSunkWalls = step("bridge.sunk-walls", 1, (given: SunkWallsInput): readonly Wall[] =>
  given.sunk.flatMap((sunk) => [
    beside(given, sunk),
    under(given, sunk),
    ...ends(given, sunk),
    ...round(given, sunk),
  ]),
);

const named = ({ kind, id }: Sunk) => (kind === "cradle" ? "the cradle" : `the screw ${id}`);

/** What follows from where it is: a cradle's own size, or a screw's place in the foot. */
const sizes = ({ kind }: Sunk) =>
  kind === "cradle" ? ["cradle.length"] : ["bridge.foot.width", "bridge.foot.thickness"];

function beside({ width, core, wall }: SunkWallsInput, sunk: Sunk): Wall {
  const left = Math.min(
    ...placesOn(sunk.path).map(({ x, y }) => coreHalf(width, fromCore(core, { x, z: 0 }).x) - Math.abs(y)),
  );
  const wider = `widen core.width by ${more(2 * (wall - left))} mm or narrow bridge.foot.width`;
  const ids = ["bridge.foot.width", "core.width", "core.taper"];
  return { left, between: `${named(sunk)} and the core's side`, ids, mend: left < wall ? wider : "leave it" };
}

function under({ depth, wall }: SunkWallsInput, sunk: Sunk): Wall {
  const id = sunk.kind === "cradle" ? "cradle.depth" : "saddle.screw.depth";
  return {
    ...{ left: depth - sunk.depth, between: `${named(sunk)} and the core's back`, ids: [id, "core.depth"] },
    mend: lowerTo(id, depth - wall),
  };
}

function ends({ core, end, wall }: SunkWallsInput, sunk: Sunk): Wall[] {
  const { minX, maxX } = extentsOf([sunk.path])!;
  const wall2 = (left: number, what: string, id: string): Wall => ({
    ...{ left, between: `${named(sunk)} and the core's ${what}`, ids: [...sizes(sunk), id] },
    mend:
      sunk.kind === "cradle"
        ? lowerTo("cradle.length", sunk.size - 2 * (wall - left))
        : `move ${id} by ${more(wall - left)} mm`,
  });
  return [
    wall2(minX, "beginning", "core.start"),
    wall2((end - core.start) / coreAxes(core).u.x - maxX, "end", "core.end"),
  ];
}

/** The wood to rods and pins that lie deeper than the core's front there, in the plane of that front. */
function round({ others, core, wall }: SunkWallsInput, sunk: Sunk): Wall[] {
  const along = coreAxes(core).u.x;
  return others.flatMap(({ what, path, depth, ids }): Wall[] => {
    const { maxX } = extentsOf([path])!;
    if (depth !== "through" && depth <= -frontAt(core, Math.min(maxX, farthest(core, sunk)))) return [];
    const laid = { ...path, points: path.points.map((at) => ({ ...at, x: (at.x - core.start) / along })) };
    const left = apart(sunk.path, laid);
    const mend =
      sunk.kind === "cradle" ? lowerTo("cradle.length", sunk.size - 2 * (wall - left)) : `move ${ids[0]}`;
    return [{ left, between: `${named(sunk)} and ${what}`, ids: [...sizes(sunk), ...ids], mend }];
  });
}

const farthest = (core: CoreFrame, { path }: Sunk) => fromCore(core, { x: extentsOf([path])!.minX, z: 0 }).x;

/** How far two outlines are apart, mm; where they overlap, how far a place of one lies in the other, negative. */
function apart(a: Path, b: Path): number {
  const reach = (of: Path, to: Path) =>
    placesOn(of).map((place) => {
      const nearest = nearestPlace(to, place);
      const distance = nearest.kind === "ok" ? nearest.distance : Number.POSITIVE_INFINITY;
      return whereabouts(to, place) === "inside" ? -distance : distance;
    });
  return Math.min(...reach(a, b), ...reach(b, a));
}

function more(by: number): number {
  return Math.ceil(by * 100 - 1e-6) / 100;
}
