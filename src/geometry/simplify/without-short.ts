import type { Path, PathPoint } from "../path.ts";

/**
 * A path without the segments whose ends are nearer than `short` (mm). The start of a dropped segment stays and its end
 * goes, but an open path keeps its last point. A path that is all short has one point left, or none.
 */
export function withoutShort(path: Path, short: number): Path {
  const { closed, points } = path;
  const kept: PathPoint[] = [];
  for (const point of points) {
    const last = kept.at(-1);
    if (last === undefined || apart(last, point) >= short) kept.push(point);
    else kept[kept.length - 1] = { ...last, bulge: point.bulge };
  }
  if (closed) {
    while (kept.length > 1 && apart(kept.at(-1)!, kept[0]!) < short) kept.pop();
  } else if (kept.length > 1) {
    const { x, y } = points.at(-1)!;
    kept[kept.length - 1] = { x, y, bulge: 0 };
  }
  return kept.length === points.length ? path : { closed, points: kept };
}

function apart(a: PathPoint, b: PathPoint): number {
  return Math.hypot(b.x - a.x, b.y - a.y);
}
