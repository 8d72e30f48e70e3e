import type { Path } from "../../geometry/path.ts";
import { directionOn, pointOn } from "../../geometry/path-measures/segment-places.ts";
import type { Point } from "../../geometry/point.ts";
import { type Segment, segmentBetween, segmentLength, segmentsOf } from "../../geometry/segment.ts";
import { type Ahead, aheadOf } from "./nearest.ts";

/** How far apart the guide is tried as it rolls, mm along the way of its middle. */
const tried = 0.25;

/** How close two looks come where the guide may just find room between them, mm. */
const closest = 0.01;

/** How far the guide may seem to stand inside the template, mm: what rounding does, far below what a cut is judged by. */
const inside = 1e-6;

/**
 * Where the middle of a guide goes as it rolls along an edge with the template on its left, mm: pieces of lines and arcs, in order.
 *
 * It touches the edge at every place that it can, `radius` from it along the normal there; round a corner that points at it, it turns
 * about that corner. Where the template hinders it (`hinders`: the whole of the template's outline, or the edge alone) it is not: it is tried
 * every quarter of a millimetre, closer where it may just find room, and where it begins or ends to be free is found by halving. What hinders it for less
 * than that stands in it by no more than a few micrometres.
 */
export function rolledAlong(edge: Path, radius: number, hinders: readonly Path[]): Segment[] {
  const obstacles = aheadOf(hinders.flatMap(segmentsOf));
  return touching(edge, radius).flatMap((piece) => freeParts(piece, radius, obstacles));
}

/** The ways of the middle while the guide touches each line, arc and outward corner of an edge, whether free or not. */
function touching(edge: Path, radius: number): Segment[] {
  const real = segmentsOf(edge).filter((segment) => segmentLength(segment) > 0);
  return real.flatMap((segment, i): Segment[] => {
    const before = i > 0 ? real[i - 1] : edge.closed ? real.at(-1) : undefined;
    const corner = before === undefined ? [] : roundCorner(before, segment, radius);
    return [...corner, ...beside(segment, radius)];
  });
}

/** Beside a line or an arc, on its right; nothing where an arc is hollow and tighter than the guide. */
function beside(segment: Segment, radius: number): Segment[] {
  const from = off(segment, 0, radius);
  const to = off(segment, 1, radius);
  if (segment.kind === "line") return [{ kind: "line", from, to }];
  const { sweep } = segment;
  const wide = sweep > 0 ? segment.radius + radius : segment.radius - radius;
  if (wide <= 0) return [];
  const way = segmentBetween(from, to, Math.tan(sweep / 4));
  return segmentLength(way) > 0 ? [way] : [];
}

function off(segment: Segment, share: number, radius: number): Point {
  const [at, { x, y }] = [pointOn(segment, share), directionOn(segment, share)];
  return { x: at.x + y * radius, y: at.y - x * radius };
}

/** About the corner between two edges where it turns to the left, away from the guide; in two arcs where it turns by half a circle. */
function roundCorner(before: Segment, after: Segment, radius: number): Segment[] {
  const [a, b] = [directionOn(before, 1), directionOn(after, 0)];
  const turn = Math.atan2(a.x * b.y - a.y * b.x, a.x * b.x + a.y * b.y);
  if (turn * radius < 1e-9) return [];
  const way = segmentBetween(off(before, 1, radius), off(after, 0, radius), Math.tan(turn / 4));
  return segmentLength(way) > 0 ? [way] : [];
}

/** The parts of a way on which the guide doesn't stand in the template. */
function freeParts(way: Segment, radius: number, obstacles: Ahead): Segment[] {
  const isFree = (share: number) => obstacles.isClear(pointOn(way, share), radius - inside);
  const parts: Segment[] = [];
  let last = 0;
  let from: number | undefined;
  for (const { share, free } of lookedAt(way, radius, obstacles)) {
    if (free && from === undefined) from = share === 0 ? 0 : border(share, last, isFree);
    if (!free && from !== undefined) {
      parts.push(partOf(way, from, border(last, share, isFree)));
      from = undefined;
    }
    last = share;
  }
  if (from !== undefined) parts.push(partOf(way, from, 1));
  return parts;
}

/** A share of a way that was looked at, and whether the guide is free there. */
type Look = { readonly share: number; readonly free: boolean };

/**
 * The shares of a way from 0 to 1 to look at. As the middle moves by a length its distance to the template
 * changes by no more: between two looks where the guide is hindered it may be free only if the two distances are near enough to
 * its radius, and there it is looked again until the looks are as close as `closest`.
 */
function lookedAt(way: Segment, radius: number, obstacles: Ahead): Look[] {
  const length = segmentLength(way);
  const enough = radius - inside;
  const far = (share: number) => obstacles.distance(pointOn(way, share));
  const looks: Look[] = [];
  const take = (share: number, distance: number) => looks.push({ share, free: distance >= enough });
  const between = (from: number, to: number, atFrom: number, atTo: number) => {
    const apart = (to - from) * length;
    if (apart <= closest || atFrom >= enough || atTo >= enough || atFrom + atTo + apart < 2 * enough) return;
    const middle = (from + to) / 2;
    const here = far(middle);
    between(from, middle, atFrom, here);
    take(middle, here);
    between(middle, to, here, atTo);
  };
  const count = Math.max(2, Math.ceil(length / tried));
  let before = far(0);
  take(0, before);
  for (let k = 1; k <= count; k++) {
    const here = far(k / count);
    between((k - 1) / count, k / count, before, here);
    take(k / count, here);
    before = here;
  }
  return looks;
}

/** Where freedom ends between a share that is free and one that isn't. */
function border(free: number, not: number, isFree: (share: number) => boolean): number {
  let [yes, no] = [free, not];
  for (let i = 0; i < 40; i++) {
    const middle = (yes + no) / 2;
    if (isFree(middle)) yes = middle;
    else no = middle;
  }
  return yes;
}

function partOf(way: Segment, from: number, to: number): Segment {
  if (from === 0 && to === 1) return way;
  const bulge = way.kind === "arc" ? Math.tan((way.sweep * (to - from)) / 4) : 0;
  return segmentBetween(pointOn(way, from), pointOn(way, to), bulge);
}
