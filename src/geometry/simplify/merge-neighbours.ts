import type { Path, PathPoint } from "../path.ts";
import { arcRun } from "./arc-run.ts";
import { lineRun } from "./line-run.ts";

/**
 * Segments that can be one: the point that the one starts at, with its bulge, and a way to ask whether the next segment
 * can be one with them too.
 */
export type Run = {
  readonly point: PathPoint;
  readonly longer: (from: PathPoint, to: PathPoint) => Run | undefined;
};

/**
 * A path in which neighbours that lie within `stray` (mm) of one line, or of one circle up to half of it, are one
 * segment. Points that stay do not move; a closed path begins at a point where two neighbours cannot be merged, if
 * there is one.
 */
export function mergeNeighbours(path: Path, stray: number): Path {
  const points = path.closed ? fromCorner(path.points, stray) : path.points;
  const count = points.length;
  const kept: PathPoint[] = [];
  let run: Run | undefined;
  for (let i = 0; i < (path.closed ? count : count - 1); i++) {
    const from = points[i]!;
    const to = points[(i + 1) % count]!;
    // A closed path of one segment is none: at least two have to stay.
    const closesUp = path.closed && i === count - 1 && kept.length === 0;
    const longer = closesUp ? undefined : run?.longer(from, to);
    if (longer === undefined && run !== undefined) kept.push(run.point);
    run = longer ?? runOf(from, to, stray);
  }
  if (run !== undefined) kept.push(run.point);
  if (!path.closed) kept.push(points.at(-1)!);
  return { closed: path.closed, points: kept };
}

function runOf(from: PathPoint, to: PathPoint, stray: number): Run {
  return from.bulge === 0 ? lineRun(from, to, stray) : arcRun(from, to, stray);
}

/** The points of a closed path from one on where the neighbours before and after cannot be merged. */
function fromCorner(points: readonly PathPoint[], stray: number): readonly PathPoint[] {
  const count = points.length;
  const corner = points.findIndex((here, i) => {
    const after = points[(i + 1) % count]!;
    return runOf(points.at(i - 1)!, here, stray).longer(here, after) === undefined;
  });
  return corner < 1 ? points : [...points.slice(corner), ...points.slice(0, corner)];
}
