import type { Path, PathPoint } from "../path.ts";
import { tolerance } from "../tolerance.ts";
import type { Problem } from "./problem.ts";

/** The farthest that a coordinate may lie from 0, mm. */
export const farthest = 1e6;

/** What is wrong with the points of a path by themselves; `which` is the path's number. */
export function pointProblems({ closed, points }: Path, which: number): Problem[] {
  const problems: Problem[] = [];
  const count = points.length;
  if (count < 2) problems.push({ code: "too-few-points", path: which, index: 0 });
  let longest = 0;
  for (let i = 0; i < count; i++) {
    const from = points[i]!;
    if (!isFinitePoint(from)) problems.push({ code: "not-finite", path: which, index: i });
    else if (Math.abs(from.x) > farthest || Math.abs(from.y) > farthest)
      problems.push({ code: "out-of-range", path: which, index: i });
    if (!closed && i === count - 1) break;
    if (Math.abs(from.bulge) > 1) problems.push({ code: "bulge-over-half", path: which, index: i });
    const to = points[i + 1 === count ? 0 : i + 1]!;
    const dx = to.x - from.x;
    const dy = to.y - from.y;
    const chord = Math.sqrt(dx * dx + dy * dy);
    if (chord < tolerance.exact) problems.push({ code: "repeated-point", path: which, index: i });
    if (chord > longest) longest = chord;
  }
  if (count > 1 && longest < tolerance.exact) problems.push({ code: "zero-length", path: which, index: 0 });
  return problems;
}

function isFinitePoint({ x, y, bulge }: PathPoint): boolean {
  return Number.isFinite(x) && Number.isFinite(y) && Number.isFinite(bulge);
}
