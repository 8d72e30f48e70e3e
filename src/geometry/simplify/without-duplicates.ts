import type { Path, PathPoint } from "../path.ts";
import { reversedPath } from "../reversed-path.ts";

/**
 * Paths without those that lie on an earlier one point for point within `near` (mm), whichever way they are walked and,
 * for closed ones, wherever they begin.
 */
export function withoutDuplicates(paths: readonly Path[], near: number): Path[] {
  const kept: Path[] = [];
  const bySize = new Map<string, Path[]>();
  for (const path of paths) {
    const key = `${path.closed} ${path.points.length}`;
    const alike = bySize.get(key) ?? [];
    if (alike.some((other) => isSame(other, path, near))) continue;
    bySize.set(key, [...alike, path]);
    kept.push(path);
  }
  return kept;
}

function isSame(a: Path, b: Path, near: number): boolean {
  return matches(a, b, near) || matches(a, reversedPath(b), near);
}

function matches({ closed, points }: Path, other: Path, near: number): boolean {
  const count = points.length;
  const starts = closed ? other.points.map((_, start) => start) : [0];
  return starts.some((start) =>
    points.every((point, i) => {
      const against = other.points[(start + i) % count]!;
      return closed || i < count - 1 ? sameSegment(point, against, near) : samePlace(point, against, near);
    }),
  );
}

function samePlace(a: PathPoint, b: PathPoint, near: number): boolean {
  return Math.abs(a.x - b.x) < near && Math.abs(a.y - b.y) < near;
}

/** The ends are compared by their own points; the rise of an arc by its bulge, whose change moves it by no more. */
function sameSegment(a: PathPoint, b: PathPoint, near: number): boolean {
  return samePlace(a, b, near) && Math.abs(a.bulge - b.bulge) < near;
}
