import { extentsOf } from "../../geometry/measure.ts";
import type { Path, PathPoint } from "../../geometry/path.ts";
import { directionOn } from "../../geometry/path-measures/segment-places.ts";
import { reversedPath } from "../../geometry/reversed-path.ts";
import { type Segment, segmentsOf } from "../../geometry/segment.ts";
import { tolerance } from "../../geometry/tolerance.ts";

/** The two sides of a long outline, both walked along x: the one at lesser y and the one at greater. */
export type LongSides =
  | { readonly kind: "ok"; readonly low: Path; readonly high: Path }
  | { readonly kind: "no-sides" };

/**
 * The sides of a closed, counter-clockwise outline that lies along x, mm, without its two ends.
 *
 * An end is every line or arc that reaches the outline's least or greatest x running more across than along there: the end
 * itself and its rounded corners. `no-sides` where that doesn't leave just two runs.
 */
export function longSides(outline: Path): LongSides {
  const extents = extentsOf([outline]);
  if (extents === undefined || !outline.closed) return { kind: "no-sides" };
  const { minX, maxX } = extents;
  const isEnd = segmentsOf(outline).map((segment) => endsAcross(segment, minX) || endsAcross(segment, maxX));
  const count = isEnd.length;
  const first = isEnd.findIndex((end, i) => !end && isEnd.at(i - 1) === true);
  if (first < 0) return { kind: "no-sides" };
  const runs: number[][] = [];
  for (let k = 0; k < count; k++) {
    const i = (first + k) % count;
    if (isEnd[i]) continue;
    if (isEnd.at(i - 1) === true) runs.push([]);
    runs.at(-1)!.push(i);
  }
  const paths = runs.map((run) => runPath(outline.points, run));
  const [low, high] = [paths.find(runsAlong), paths.find((path) => !runsAlong(path))];
  if (paths.length !== 2 || low === undefined || high === undefined) return { kind: "no-sides" };
  return { kind: "ok", low, high: reversedPath(high) };
}

function endsAcross(segment: Segment, x: number): boolean {
  const across = (share: number) => {
    const direction = directionOn(segment, share);
    return Math.abs(direction.y) > Math.abs(direction.x);
  };
  const at = (place: { x: number }) => Math.abs(place.x - x) < tolerance.exact;
  return (at(segment.from) && across(0)) || (at(segment.to) && across(1));
}

function runPath(points: readonly PathPoint[], run: readonly number[]): Path {
  const last = points[(run.at(-1)! + 1) % points.length]!;
  return { closed: false, points: [...run.map((i) => points[i]!), { x: last.x, y: last.y, bulge: 0 }] };
}

function runsAlong({ points }: Path): boolean {
  return points.at(-1)!.x > points[0]!.x;
}
