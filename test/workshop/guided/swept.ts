import { pathLength } from "../../../src/geometry/measure.ts";
import type { Path } from "../../../src/geometry/path.ts";
import { placeAlong } from "../../../src/geometry/path-measures/place-along.ts";

type Place = { readonly x: number; readonly y: number };

/** Places along a path, two millimetres apart or less, with the direction there. */
export function along(path: Path) {
  const length = pathLength(path);
  const count = Math.ceil(length / 2);
  return Array.from({ length: count + 1 }, (_, i) =>
    placeAlong(path, path.closed ? (length * i) / (count + 1) : Math.min(length, (length * i) / count)),
  ).flatMap((at) => (at.kind === "ok" ? [at] : []));
}

/** The middles of a guide that rides on an edge with the template on its left, by points alone: those where it stands in no other place of the edge. */
export function middlesOn(edge: Path, guide: number): Place[] {
  const points = along(edge);
  return points
    .map(({ point, direction }) => ({
      x: point.x + (direction.y * guide) / 2,
      y: point.y - (direction.x * guide) / 2,
    }))
    .filter((middle) => points.every(({ point }) => far(point, middle) > guide / 2 - 0.02));
}

/** The least distance between a path's places and some others, mm. */
export function leastTo(path: Path, others: readonly Place[]): number {
  let least = Number.POSITIVE_INFINITY;
  for (const { point } of along(path)) for (const other of others) least = Math.min(least, far(point, other));
  return least;
}

function far(a: Place, b: Place): number {
  return Math.hypot(a.x - b.x, a.y - b.y);
}
