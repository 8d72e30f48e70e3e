import Flatbush from "flatbush";
import type { Path, PathPoint } from "../path.ts";
import type { Point } from "../point.ts";
import { reversedPath } from "../reversed-path.ts";

/**
 * Open paths joined end to end where ends lie nearer than `join` (mm), the nearest first, and closed where their own
 * ends do. Joined ends meet half way. Closed paths are left alone; a path joined to others takes the direction of the
 * first.
 */
export function joinEnds(paths: readonly Path[], join: number): Path[] {
  const closed = paths.filter((path) => path.closed);
  const open = paths.filter((path) => !path.closed);
  if (open.length === 0) return closed;
  const partner = partners(open, join);
  const used = new Set<number>();
  const joined: Path[] = [];
  // First the chains with a free end, from that end; then what is left are rings.
  const ends = Array.from({ length: 2 * open.length }, (_, end) => end);
  for (const end of [...ends.filter((each) => partner[each] === -1), ...ends]) {
    if (!used.has(end >> 1)) joined.push(chainFrom(end, open, partner, used));
  }
  return [...closed, ...joined];
}

/**
 * Ends are numbered: 2k is the first point of path k, 2k + 1 its last. For each the end that it is joined to, or
 * -1.
 */
function partners(open: readonly Path[], join: number): Int32Array {
  const places = open.flatMap(({ points }): Point[] => [points[0]!, points.at(-1)!]);
  const index = new Flatbush(places.length);
  for (const { x, y } of places) index.add(x, y);
  index.finish();
  const pairs: { a: number; b: number; apart: number }[] = [];
  places.forEach(({ x, y }, a) => {
    for (const b of index.search(x - join, y - join, x + join, y + join)) {
      const apart = Math.hypot(places[b]!.x - x, places[b]!.y - y);
      const whole = a >> 1 !== b >> 1 || open[a >> 1]!.points.length > 2 || bulges(open[a >> 1]!);
      if (b > a && apart < join && whole) pairs.push({ a, b, apart });
    }
  });
  pairs.sort((p, q) => p.apart - q.apart || p.a - q.a || p.b - q.b);
  const partner = new Int32Array(places.length).fill(-1);
  for (const { a, b } of pairs) {
    if (partner[a] === -1 && partner[b] === -1) [partner[a], partner[b]] = [b, a];
  }
  return partner;
}

function bulges({ points }: Path): boolean {
  return points[0]!.bulge !== 0;
}

/** The path that begins at an end and goes on through all that is joined to it. */
function chainFrom(first: number, open: readonly Path[], partner: Int32Array, used: Set<number>): Path {
  let points: PathPoint[] = [];
  let end = first;
  for (;;) {
    const path = open[end >> 1]!;
    used.add(end >> 1);
    const along = end % 2 === 0 ? path : reversedPath(path);
    points = points.length === 0 ? [...along.points] : met(points, along.points);
    const next = partner[end ^ 1]!;
    if (next === -1) return { closed: false, points };
    if (used.has(next >> 1)) return { closed: true, points: closedUp(points) };
    end = next;
  }
}

/** Two runs of points made one: the last of the first and the first of the second meet half way. */
function met(a: readonly PathPoint[], b: readonly PathPoint[]): PathPoint[] {
  const [last, first] = [a.at(-1)!, b[0]!];
  const middle = { x: (last.x + first.x) / 2, y: (last.y + first.y) / 2, bulge: first.bulge };
  return [...a.slice(0, -1), middle, ...b.slice(1)];
}

function closedUp(points: readonly PathPoint[]): PathPoint[] {
  const [first, last] = [points[0]!, points.at(-1)!];
  return [
    { x: (first.x + last.x) / 2, y: (first.y + last.y) / 2, bulge: first.bulge },
    ...points.slice(1, -1),
  ];
}
