import type { Path } from "../path.ts";
import { tolerance } from "../tolerance.ts";
import type { Problem } from "./problem.ts";

/** The farthest that a coordinate may lie from 0, mm. */
export const farthest = 1e6;

/** What is wrong with the points of a path by themselves; `which` is the path's number. */
export function pointProblems({ closed, points }: Path, which: number): Problem[] {
  const problems: Problem[] = [];
  const count = points.length;
  if (count < 2) problems.push({ code: "too-few-points", path: which, index: 0 });
  let length = 0;
  for (let i = 0; i < count; i++) {
    const { x, y, bulge } = points[i]!;
    const say = (code: Problem["code"]) => problems.push({ code, path: which, index: i });
    if (!(Number.isFinite(x) && Number.isFinite(y) && Number.isFinite(bulge))) say("not-finite");
    else if (Math.abs(x) > farthest || Math.abs(y) > farthest) say("out-of-range");
    if (!closed && i === count - 1) break;
    if (Math.abs(bulge) > 1) say("bulge-over-half");
    const to = points[i + 1 === count ? 0 : i + 1]!;
    const [dx, dy] = [to.x - x, to.y - y];
    const chord = Math.sqrt(dx * dx + dy * dy);
    if (chord < tolerance.exact) say("repeated-point");
    length = Math.max(length, chord);
  }
  if (count > 1 && length < tolerance.exact) problems.push({ code: "zero-length", path: which, index: 0 });
  return problems;
}
