import type { Point } from "../point.ts";
import { type Segment, segmentBetween, segmentLength } from "../segment.ts";
import { tolerance } from "../tolerance.ts";
import type { MarkedPoint } from "./marked-point.ts";

/** Two runs of lines and arcs with an arc between that is tangent to both; the arc starts at the end of `before`. */
export type RoundedCorner =
  | {
      readonly kind: "rounded";
      readonly before: readonly MarkedPoint[];
      readonly after: readonly MarkedPoint[];
      readonly passed: readonly string[];
    }
  | { readonly kind: "smooth" }
  | { readonly kind: "no-room" };

/**
 * Rounds the corner where a run of lines and arcs ends and another starts, with a radius in mm.
 *
 * The arc's centre is a crossing of the two runs' parallels at the radius, on the side to which the corner turns; of
 * several the one nearest the corner along the runs. What lies between the touching points falls away, stations with a
 * name too: those are `passed`. `smooth` where the runs leave no corner, within a millionth of a radian; `no-room`
 * where no arc of that radius touches both, a hairpin included.
 */
export function roundCorner(
  before: readonly MarkedPoint[],
  after: readonly MarkedPoint[],
  radius: number,
): RoundedCorner {
  if (before.length < 2 || after.length < 2) return { kind: "no-room" };
  const ends = runSegments(before);
  const starts = runSegments(after);
  const arriving = directionAt(ends.at(-1)!, ends.at(-1)!.to);
  const leaving = directionAt(starts[0]!, starts[0]!.from);
  const turn = Math.atan2(cross(arriving, leaving), arriving.x * leaving.x + arriving.y * leaving.y);
  if (Math.abs(turn) < 1e-6) return { kind: "smooth" };
  const reach = turn > 0 ? radius : -radius;
  for (let sum = 0; sum <= ends.length + starts.length - 2; sum++) {
    for (let j = Math.max(0, sum - ends.length + 1); j <= Math.min(sum, starts.length - 1); j++) {
      const i = ends.length - 1 - (sum - j);
      const found = touching(ends[i]!, starts[j]!, reach);
      if (found) return trimmed(before, after, i, j, found, ends[i]!, starts[j]!);
    }
  }
  return { kind: "no-room" };
}

type Touch = { readonly leave: Point; readonly meet: Point; readonly turn: number };

function runSegments(run: readonly MarkedPoint[]): Segment[] {
  return run.slice(0, -1).map((point, i) => segmentBetween(point, run[i + 1]!, point.bulge));
}

function cross(a: Point, b: Point): number {
  return a.x * b.y - a.y * b.x;
}

/** The direction of travel of a segment at a place on it, of unit length. */
function directionAt(segment: Segment, at: Point): Point {
  if (segment.kind === "line") {
    const length = Math.hypot(segment.to.x - segment.from.x, segment.to.y - segment.from.y);
    return { x: (segment.to.x - segment.from.x) / length, y: (segment.to.y - segment.from.y) / length };
  }
  const sign = Math.sign(segment.sweep) / segment.radius;
  return { x: -sign * (at.y - segment.centre.y), y: sign * (at.x - segment.centre.x) };
}

/** The arc of a radius (positive: turning left) that leaves one segment and meets the other, tangent to both. */
function touching(a: Segment, b: Segment, reach: number): Touch | undefined {
  let best: Touch | undefined;
  for (const centre of crossings(parallel(a, reach), parallel(b, reach))) {
    const leave = foot(a, centre);
    const meet = foot(b, centre);
    if (!leave || !meet) continue;
    const [from, to] = [directionAt(a, leave), directionAt(b, meet)];
    const angle = Math.atan2(cross(from, to), from.x * to.x + from.y * to.y);
    if (Math.sign(angle) !== Math.sign(reach)) continue;
    if (!best || Math.abs(angle) < Math.abs(best.turn)) best = { leave, meet, turn: angle };
  }
  return best;
}

/** A line by a place and a direction, or a circle: where the centres of arcs tangent to a segment lie. */
type Parallel =
  | { readonly kind: "line"; readonly at: Point; readonly along: Point }
  | { readonly kind: "circle"; readonly centre: Point; readonly radius: number }
  | { readonly kind: "nothing" };

function parallel(segment: Segment, reach: number): Parallel {
  if (segment.kind === "line") {
    const along = directionAt(segment, segment.from);
    return {
      kind: "line",
      at: { x: segment.from.x - reach * along.y, y: segment.from.y + reach * along.x },
      along,
    };
  }
  const radius = segment.radius - Math.sign(segment.sweep) * reach;
  return radius > 0 ? { kind: "circle", centre: segment.centre, radius } : { kind: "nothing" };
}

function crossings(a: Parallel, b: Parallel): Point[] {
  if (a.kind === "nothing" || b.kind === "nothing") return [];
  if (a.kind === "line" && b.kind === "line") {
    const across = cross(a.along, b.along);
    if (across === 0) return [];
    const t = cross({ x: b.at.x - a.at.x, y: b.at.y - a.at.y }, b.along) / across;
    return [{ x: a.at.x + t * a.along.x, y: a.at.y + t * a.along.y }];
  }
  if (a.kind === "line") return b.kind === "circle" ? onLine(a.at, a.along, b.centre, b.radius) : [];
  if (b.kind === "line") return onLine(b.at, b.along, a.centre, a.radius);
  const [dx, dy] = [b.centre.x - a.centre.x, b.centre.y - a.centre.y];
  const apart = Math.hypot(dx, dy);
  if (apart === 0) return [];
  const t = (apart * apart + a.radius * a.radius - b.radius * b.radius) / (2 * apart);
  const at = { x: a.centre.x + (t * dx) / apart, y: a.centre.y + (t * dy) / apart };
  return onLine(at, { x: -dy / apart, y: dx / apart }, a.centre, a.radius);
}

function onLine(at: Point, along: Point, centre: Point, radius: number): Point[] {
  const t = (centre.x - at.x) * along.x + (centre.y - at.y) * along.y;
  const aside = (centre.x - at.x) * along.y - (centre.y - at.y) * along.x;
  const square = radius * radius - aside * aside;
  if (square < 0) return [];
  const half = Math.sqrt(square);
  return [t - half, t + half].map((s) => ({ x: at.x + s * along.x, y: at.y + s * along.y }));
}

/** The place of a segment nearest a centre beside it, where that is within the segment; near its ends, the end. */
function foot(segment: Segment, centre: Point): Point | undefined {
  const length = segmentLength(segment);
  let along: number;
  let place: Point;
  if (segment.kind === "line") {
    const way = directionAt(segment, segment.from);
    along = (centre.x - segment.from.x) * way.x + (centre.y - segment.from.y) * way.y;
    place = { x: segment.from.x + along * way.x, y: segment.from.y + along * way.y };
  } else {
    const [dx, dy] = [centre.x - segment.centre.x, centre.y - segment.centre.y];
    const scale = segment.radius / Math.hypot(dx, dy);
    place = { x: segment.centre.x + dx * scale, y: segment.centre.y + dy * scale };
    along = (sweepTo(segment, place) / segment.sweep) * length;
  }
  if (!(along >= -tolerance.exact && along <= length + tolerance.exact)) return undefined;
  if (along <= tolerance.exact) return segment.from;
  return along >= length - tolerance.exact ? segment.to : place;
}

/** The angle from an arc's start to a place on its circle, radians, in the arc's own sense, from -pi to pi round its middle. */
function sweepTo(segment: Segment & { kind: "arc" }, place: Point): number {
  const middle = segment.start + segment.sweep / 2;
  const angle = Math.atan2(place.y - segment.centre.y, place.x - segment.centre.x);
  const off = angle - middle;
  return off - 2 * Math.PI * Math.round(off / (2 * Math.PI)) + segment.sweep / 2;
}

/** Both runs cut at the touching points; a piece that the cut leaves without length is dropped. */
function trimmed(
  before: readonly MarkedPoint[],
  after: readonly MarkedPoint[],
  i: number,
  j: number,
  touch: Touch,
  a: Segment,
  b: Segment,
): RoundedCorner {
  const bulge = Math.tan(touch.turn / 4);
  const lost = [...before.slice(i + 1), ...after.slice(0, j + 1)];
  const kept = before.slice(0, i + 1);
  const last = kept.pop()!;
  if (touch.leave === a.from) kept.push({ ...last, bulge });
  else {
    const part = a.kind === "arc" ? Math.tan(sweepTo(a, touch.leave) / 4) : 0;
    kept.push({ ...last, bulge: part }, { ...touch.leave, bulge });
  }
  const rest = after.slice(j + 1);
  if (touch.meet !== b.to) {
    rest.unshift({
      ...touch.meet,
      bulge: b.kind === "arc" ? Math.tan((b.sweep - sweepTo(b, touch.meet)) / 4) : 0,
    });
  }
  const passed = [...new Set(lost.flatMap(({ id }) => (id === undefined ? [] : [id])))];
  return { kind: "rounded", before: kept, after: rest, passed };
}
