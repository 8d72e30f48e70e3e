import { difference } from "../boolean/difference.ts";
import { intersection } from "../boolean/intersection.ts";
import { union } from "../boolean/union.ts";
import { signedArea } from "../measure.ts";
import type { Path } from "../path.ts";
import type { Point } from "../point.ts";
import { outlinesOf, type Region } from "../region.ts";
import { tolerance } from "../tolerance.ts";
import type { Problem } from "../validate/problem.ts";
import { validateRegion } from "../validate/validate-region.ts";
import { type HollowCorner, hollowCorners } from "./hollow-corners.ts";

/**
 * One relief: the corner, the centre that the cutter goes to, how far its cut goes beyond the sides of the corner at
 * most (mm), and the area that it takes beyond the outline (mm²).
 */
export type Relief = {
  readonly corner: HollowCorner;
  readonly centre: Point;
  readonly beyond: number;
  readonly area: number;
};

/** What became of relieving corners. */
export type Relieved =
  | { readonly outcome: "ok"; readonly region: Region; readonly reliefs: readonly Relief[] }
  | { readonly outcome: "none" }
  | { readonly outcome: "invalid"; readonly problems: readonly Problem[] };

/**
 * Cut hollow corners free, so that a square corner can seat in them, with a cutter of a radius (mm).
 *
 * `bisector`: the cutter goes on along the bisector until it reaches the corner's point; `along`: along the side
 * after the corner, which leaves the side before it whole. `inside` relieves the corners of a region cut out from
 * within, `outside` those of one cut free from without, which then gets smaller. Relieved are the corners within
 * `tolerance.exact` of the given places or, where none are given, all that turn by 45 degrees or more. `none` where
 * there is no such corner; `invalid` when the region is not good or the radius not more than `tolerance.exact`.
 */
export function relieveCorners(
  region: Region,
  radius: number,
  side: "inside" | "outside",
  { manner = "bisector", at }: { manner?: "bisector" | "along"; at?: readonly Point[] } = {},
): Relieved {
  const problems = validateRegion(region).filter(({ code }) => code !== "repeated-point");
  if (!(Number.isFinite(radius) && radius > tolerance.exact))
    problems.push({ code: "not-finite", path: 0, index: 0 });
  if (problems.length > 0) return { outcome: "invalid", problems };
  const corners = hollowCorners(region, side, at === undefined ? 45 : 1e-3).filter(
    (corner) => at === undefined || at.some((place) => isSame(place, corner.at)),
  );
  if (corners.length === 0) return { outcome: "none" };
  let relieved = region;
  const reliefs = corners.map((corner): Relief => {
    const { centre, sweep, beyond } = cutAt(corner, radius, manner);
    const cut = [{ outer: sweep, holes: [] }];
    const taken = side === "inside" ? difference(cut, region) : intersection(cut, region);
    const after = side === "inside" ? union(relieved, cut) : difference(relieved, cut);
    if (after.outcome === "ok") relieved = after.region;
    const area = taken.outcome === "ok" ? areaOf(taken.region) : 0;
    return { corner, centre, beyond, area };
  });
  return { outcome: "ok", region: relieved, reliefs };
}

function isSame(a: Point, b: Point): boolean {
  return Math.hypot(a.x - b.x, a.y - b.y) < tolerance.exact;
}

/**
 * What the cutter sweeps from where it touches both sides of the corner to where it reaches its point. With t the turn,
 * it touches both at r / cos(t / 2) from the point along the bisector; with its centre r from the point along the
 * bisector it is beyond either side by r - r cos(t / 2), with the centre on a side by r beyond that.
 */
function cutAt(
  { at, before, after, turn }: HollowCorner,
  radius: number,
  manner: "bisector" | "along",
): { centre: Point; sweep: Path; beyond: number } {
  const half = (turn * Math.PI) / 360;
  // From the corner into the open: along the way on and against the way here.
  const into = unit(after.x - before.x, after.y - before.y);
  const touch = radius / Math.cos(half);
  const from = { x: at.x + into.x * touch, y: at.y + into.y * touch };
  const way = manner === "bisector" ? into : after;
  const centre = { x: at.x + way.x * radius, y: at.y + way.y * radius };
  const beyond = manner === "bisector" ? radius * (1 - Math.cos(half)) : radius;
  return { centre, sweep: stadium(from, centre, radius), beyond };
}

function unit(x: number, y: number): Point {
  const size = Math.hypot(x, y);
  return { x: x / size, y: y / size };
}

/** What a circle sweeps on its way from one place to another, counter-clockwise. */
function stadium(from: Point, to: Point, radius: number): Path {
  const way = unit(to.x - from.x, to.y - from.y);
  const [ax, ay] = [way.y * radius, -way.x * radius];
  return {
    closed: true,
    points: [
      { x: from.x + ax, y: from.y + ay, bulge: 0 },
      { x: to.x + ax, y: to.y + ay, bulge: 1 },
      { x: to.x - ax, y: to.y - ay, bulge: 0 },
      { x: from.x - ax, y: from.y - ay, bulge: 1 },
    ],
  };
}

function areaOf(region: Region): number {
  return outlinesOf(region).reduce((sum, path) => sum + signedArea(path), 0);
}
