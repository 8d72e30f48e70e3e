import type { Path, PathPoint } from "../../../src/geometry/path.ts";

type Place = readonly [number, number];

/**
 * A closed path of arcs, each tangent to the next: two arcs between each pair of neighbouring places, with the direction
 * at each place along the chord between its neighbours. Two tangent arcs between two places with directions p and q meet
 * where both are reached over tangent lengths of equal size.
 */
export function tangentArcs(places: readonly Place[]): Path {
  const count = places.length;
  const heading = places.map((_, i): Place => {
    const [before, after] = [places.at(i - 1)!, places[(i + 1) % count]!];
    const size = Math.hypot(after[0] - before[0], after[1] - before[1]);
    return [(after[0] - before[0]) / size, (after[1] - before[1]) / size];
  });
  const points = places.flatMap((from, i) => {
    const next = (i + 1) % count;
    return biarc(from, places[next]!, heading[i]!, heading[next]!);
  });
  return { closed: true, points };
}

/** The first points of the two arcs, with their bulges. */
function biarc(from: Place, to: Place, leaving: Place, arriving: Place): PathPoint[] {
  const [vx, vy] = [to[0] - from[0], to[1] - from[1]];
  const [sx, sy] = [leaving[0] + arriving[0], leaving[1] + arriving[1]];
  const along = vx * sx + vy * sy;
  const spare = 2 - 2 * (leaving[0] * arriving[0] + leaving[1] * arriving[1]);
  const square = vx * vx + vy * vy;
  const reach =
    Math.abs(spare) < 1e-12 ? square / (2 * along) : (Math.sqrt(along ** 2 + spare * square) - along) / spare;
  const x = (from[0] + to[0] + reach * (leaving[0] - arriving[0])) / 2;
  const y = (from[1] + to[1] + reach * (leaving[1] - arriving[1])) / 2;
  return [
    { x: from[0], y: from[1], bulge: bulgeFrom(leaving, x - from[0], y - from[1]) },
    { x, y, bulge: -bulgeFrom([-arriving[0], -arriving[1]], x - to[0], y - to[1]) },
  ];
}

/** The bulge of the arc that leaves in a direction and reaches (dx, dy): tan(half of the angle to the chord). */
function bulgeFrom([tx, ty]: Place, dx: number, dy: number): number {
  return Math.tan(Math.atan2(tx * dy - ty * dx, tx * dx + ty * dy) / 2);
}
