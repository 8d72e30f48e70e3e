import type { Path, PathPoint } from "../../geometry/path.ts";
import type { Point } from "../../geometry/point.ts";

/** By how much one corner may turn within a band, and all of its corners together, radians: beyond, its two sides could cross. */
const turns = { one: Math.PI / 3, all: (5 * Math.PI) / 6 };

/**
 * A stroke of straight pieces as bands of `radius` to either side, mm: two corners for each of the stroke's, mitred, and ends square beyond it by the radius. Where it turns
 * sharply, or has turned far, one band ends and another begins, which lie over one another there. A quarter of the corners that a piece by itself with rounded ends would need.
 */
export function strokeBands({ points }: Path, radius: number): Path[] {
  const apart = points.filter(
    (point, i) =>
      i === 0 || Math.hypot(point.x - points[i - 1]!.x, point.y - points[i - 1]!.y) > radius / 100,
  );
  const ways = apart.slice(1).map((to, i) => Math.atan2(to.y - apart[i]!.y, to.x - apart[i]!.x));
  const lengths = apart.slice(1).map((to, i) => Math.hypot(to.x - apart[i]!.x, to.y - apart[i]!.y));
  const bands: Path[] = [];
  let [from, turned] = [0, 0];
  for (let i = 1; i <= ways.length; i++) {
    const turn = i < ways.length ? Math.abs(difference(ways[i - 1]!, ways[i]!)) : Number.POSITIVE_INFINITY;
    turned += turn;
    // The mitre on a corner's inner side takes so much of both its pieces; what two corners take of one must leave some.
    const taken = i < ways.length ? radius * Math.tan(Math.min(turn, turns.one) / 2) : 0;
    const room = taken < Math.min(lengths[i - 1]!, lengths[i] ?? 0) * 0.45;
    if (room && turn < turns.one && turned < turns.all) continue;
    bands.push(band(apart.slice(from, i + 1), ways.slice(from, i), radius));
    [from, turned] = [i, 0];
  }
  return bands;
}

function difference(a: number, b: number): number {
  const turn = b - a;
  return Math.atan2(Math.sin(turn), Math.cos(turn));
}

/** One band, counter-clockwise: along its right side and back along its left. */
function band(points: readonly Point[], ways: readonly number[], radius: number): Path {
  const last = points.length - 1;
  const corner = (i: number, side: 1 | -1): PathPoint => {
    const { x, y } = points[i]!;
    const [before, after] = [ways[Math.max(0, i - 1)]!, ways[Math.min(last - 1, i)]!];
    const half = difference(before, after) / 2;
    const [aside, beyond] = [(side * radius) / Math.cos(half), i === 0 ? -radius : i === last ? radius : 0];
    const way = before + half;
    return {
      x: x - Math.sin(way) * aside + Math.cos(way) * beyond,
      y: y + Math.cos(way) * aside + Math.sin(way) * beyond,
      bulge: 0,
    };
  };
  const order = points.map((_, i) => i);
  return {
    closed: true,
    points: [...order.map((i) => corner(i, -1)), ...order.reverse().map((i) => corner(i, 1))],
  };
}
