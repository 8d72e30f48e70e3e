import { cutterAccess } from "../../geometry/access/cutter-access.ts";
import type { Leftover } from "../../geometry/access/leftover.ts";
import { pathLength } from "../../geometry/measure.ts";
import type { Path } from "../../geometry/path.ts";
import { nearestPlace } from "../../geometry/path-measures/nearest-place.ts";
import { pointOn } from "../../geometry/path-measures/segment-places.ts";
import type { Piece } from "../../geometry/region.ts";
import { segmentLength, segmentsOf } from "../../geometry/segment.ts";
import type { CutRun } from "./cut-runs.ts";

/**
 * A place of cut edges that a cutter with its guide doesn't bring out: `hollow` where it leaves wood that it can't touch, `outward` where
 * it rounds what bends tighter than the guided edge lies inside. Its deepest point, how deep, mm, the stretch of the run from `from` to
 * `to` (mm along it), how much of the run's own edge that takes in, and whether all of that is finished by hand.
 */
export type HardPlace = {
  readonly kind: "hollow" | "outward";
  readonly x: number;
  readonly y: number;
  /** Null where the cutter comes nowhere near it. */
  readonly depth: number | null;
  readonly from: number;
  readonly to: number;
  readonly length: number;
  readonly hand: boolean;
};

/** What is left or taken by less than this counts as brought out: what a virtual cut is held to, mm. */
export const cutWithin = 0.01;

/** The hard places of a run; or that they could not be told, so that nothing is said to be brought out. */
export type HardPlaces =
  | { readonly kind: "ok"; readonly places: readonly HardPlace[] }
  | { readonly kind: "untold" };

/**
 * The hard places of a run that bounds `work`, deepest first of each kind; `cutter` is a diameter, `offset` that of the guided edge, mm. `side`: the cutter goes
 * round the work, or inside what it takes out.
 */
export function hardPlaces(
  work: Piece,
  run: CutRun,
  cutter: number,
  offset: number,
  side: "outside" | "inside" = "outside",
): HardPlaces {
  const hollow = cutterAccess([work], cutter / 2, side);
  const other = side === "outside" ? "inside" : "outside";
  const outward = offset < 0 ? cutterAccess([work], -offset, other) : undefined;
  if (side === "inside" && hollow.outcome === "shut") return { kind: "ok", places: [allOf(run)] };
  const failed = [hollow, outward].some((one) => one?.outcome === "shut" || one?.outcome === "invalid");
  if (failed) return { kind: "untold" };
  const places = [
    ...(hollow.outcome === "leaves" ? hollow.left : []).flatMap((one) => placeOf("hollow", one, run)),
    ...(outward?.outcome === "leaves" ? outward.left : []).flatMap((one) => placeOf("outward", one, run)),
  ];
  return { kind: "ok", places };
}

/** A whole run as a place that the cutter comes nowhere near. */
function allOf({ path }: CutRun): HardPlace {
  const { x, y } = path.points[0]!;
  const length = pathLength(path);
  return { kind: "hollow", x, y, depth: null, from: 0, to: length, length, hand: false };
}

/** A leftover as a place of the run; none where it is no deeper than counts, or no part of it lies along the run. */
function placeOf(kind: HardPlace["kind"], { piece, depth, place }: Leftover, run: CutRun): HardPlace[] {
  if (depth <= cutWithin) return [];
  const shared = segmentsOf(piece.outer).flatMap((segment) => {
    const [from, middle, to] = [segment.from, pointOn(segment, 0.5), segment.to].map((at) =>
      onRun(run.path, at),
    );
    return from === undefined || middle === undefined || to === undefined
      ? []
      : [{ length: segmentLength(segment), along: [from.along, to.along], segment: middle.segment }];
  });
  if (shared.length === 0) return [];
  const along = shared.flatMap((one) => one.along);
  return [
    {
      ...{ kind, x: place.x, y: place.y, depth: Number.isFinite(depth) ? depth : null },
      ...{ from: Math.min(...along), to: Math.max(...along) },
      length: shared.reduce((sum, one) => sum + one.length, 0),
      hand: shared.every(({ segment }) => run.uses[segment] === "hand"),
    },
  ];
}

/** Where a place lies on a path; nothing where it is off it. */
function onRun(path: Path, at: { readonly x: number; readonly y: number }) {
  const nearest = nearestPlace(path, at);
  return nearest.kind === "ok" && nearest.distance < onIt ? nearest : undefined;
}

/** How near to a run an outline's point lies on it, mm: far above rounding, far below what counts. */
const onIt = 1e-5;
