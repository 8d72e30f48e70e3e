import { extentsOf } from "../../geometry/measure.ts";
import type { Path } from "../../geometry/path.ts";
import { pathsApart } from "../../geometry/path-measures/paths-apart.ts";
import { step } from "../../step/step.ts";
import { type CoreFrame, frontAt } from "../core/frame.ts";
import { coreAxes, fromCore } from "../core/from-core.ts";
import { type CoreWidth, coreHalf } from "../core/width.ts";
import { placesOn } from "../fingerboard/places-on.ts";
import { lowerTo, raiseTo, type Wall } from "../wall.ts";
import type { Sunk } from "./sunk.ts";

/**
 * Something else that is sunk into the neck: its outline from the front of the instrument, its depth under z = 0, mm, and the dimension
 * that moves it along: where that stands, and how far it moves to the tail for each millimetre more.
 */
export type Beside = {
  readonly what: string;
  readonly path: Path;
  readonly depth: number | "through";
  readonly move: { readonly id: string; readonly at: number; readonly share: number };
};

/**
 * What is sunk under the bridge in its core, and all else that is sunk there. Lengths in mm; the core ends at x = `end`; `wall` is the
 * least wood wanted, `footWidth` what the places across follow from.
 */
export type SunkWallsInput = {
  readonly sunk: readonly Sunk[];
  readonly core: CoreFrame;
  readonly width: CoreWidth;
  readonly footWidth: number;
  readonly depth: number;
  readonly end: number;
  readonly others: readonly Beside[];
  readonly wall: number;
};

/** The wood left round what is sunk into the core under the bridge: beside it, under it, to the core's two ends, and to rods and pins. */
export const bridgeSunkWalls = step("bridge.sunk-walls", 1, (given: SunkWallsInput): readonly Wall[] =>
  given.sunk.flatMap((sunk) => [
    ...[beside(given, sunk), under(given, sunk)],
    ...[...ends(given, sunk), ...given.others.flatMap((other) => to(given, sunk, other))],
  ]),
);

const named = ({ kind, id }: Sunk) => (kind === "cradle" ? "the cradle" : `the screw ${id}`);

/** A cradle that is shorter by twice so much, since its middle stays under the foot's; nothing of a screw. */
const shorter = ({ kind, size }: Sunk, by: number) =>
  kind === "cradle" ? [lowerTo("cradle.length", size - 2 * by)] : [];

/** Places across lie at shares of the foot's width, so that a narrower one draws them in. */
function beside({ width, core, wall, footWidth }: SunkWallsInput, sunk: Sunk): Wall {
  const woods = placesOn(sunk.path).map(({ x, y }) => {
    const half = coreHalf(width, fromCore(core, { x, z: 0 }).x);
    return { left: half - Math.abs(y), out: Math.abs(y) };
  });
  const { left, out } = woods.reduce((least, at) => (at.left < least.left ? at : least));
  return {
    ...{ left, between: `${named(sunk)} and the core's side` },
    ids: ["bridge.foot.width", "core.width", "core.taper"],
    mend: left < wall ? lowerTo("bridge.foot.width", footWidth * (1 - (wall - left) / out)) : "leave it",
  };
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
  const along = coreAxes(core).u.x;
  const left = { start: minX, end: (end - core.start) / along - maxX };
  const own = sunk.kind === "cradle" ? ["cradle.length"] : ["bridge.foot.thickness"];
  const moved = {
    start: lowerTo("core.start", core.start - (wall - left.start) / along),
    end: raiseTo("core.end", end + (wall - left.end) * along),
  };
  return (["start", "end"] as const).map((where) => ({
    ...{ left: left[where], between: `${named(sunk)} and the core's ${where}` },
    ids: [...own, `core.${where}`],
    mend: [...shorter(sunk, wall - left[where]), moved[where]].join(" or "),
  }));
}

/** The wood to a rod's channel or a pin's hole in the core's front; none to one that lies over that. */
function to({ core, wall }: SunkWallsInput, sunk: Sunk, { what, path, depth, move }: Beside): Wall[] {
  const along = coreAxes(core).u.x;
  const laid = { ...path, points: path.points.map((at) => ({ ...at, x: (at.x - core.start) / along })) };
  const [own, its] = [extentsOf([sunk.path])!, extentsOf([laid])!];
  const nearest = Math.min(extentsOf([path])!.maxX, fromCore(core, { x: own.minX, z: 0 }).x);
  if (depth !== "through" && depth <= -frontAt(core, nearest)) return [];
  // Told to move along the core, whichever way is out of it; across there may be none.
  const ahead = its.minX + its.maxX < own.minX + own.maxX;
  const by = wall - (ahead ? own.minX - its.maxX : its.minX - own.maxX);
  const moved = move.at + ((ahead ? -1 : 1) * by * along) / move.share;
  return [
    {
      ...{ left: pathsApart(sunk.path, laid, far), between: `${named(sunk)} and ${what}` },
      ids: [sunk.kind === "cradle" ? "cradle.length" : "bridge.foot.thickness", move.id],
      mend: [...shorter(sunk, by), moved > move.at ? raiseTo(move.id, moved) : lowerTo(move.id, moved)].join(
        " or ",
      ),
    },
  ];
}

/** Boxes farther apart than this, mm, are far enough to go by: it is in nobody's way, and `check` asks it of every order. */
const far = 20;
