import { chainOf } from "../arrangement/chain.ts";
import { signedArea } from "../measure.ts";
import type { Path } from "../path.ts";
import { tolerance } from "../tolerance.ts";
import { isSimple } from "./is-simple.ts";
import { pointProblems } from "./point-problems.ts";
import type { Problem } from "./problem.ts";

/**
 * Everything that is wrong with a path that is to be an outline: closed, finite, with arcs up to half a circle, with an
 * area, and not across itself. None where it is good. `repeated-point` alone is harmless. Never throws; takes n log n
 * time. Where the points themselves are bad, crossings are not looked for.
 */
export function validateOutline(path: Path): Problem[] {
  const problems: Problem[] = path.closed ? [] : [{ code: "open", path: 0, index: 0 }];
  problems.push(...pointProblems(path, 0));
  if (problems.some(({ code }) => code !== "repeated-point")) return problems;
  const area = signedArea(path);
  const { x, y } = path.points[0]!;
  const chain = chainOf([path], x, y);
  if (Math.abs(area) <= tolerance.exact * spread(path)) problems.push({ code: "no-area", path: 0, index: 0 });
  else if (!isSimple(chain, area > 0 ? 1 : -1)) problems.push({ code: "self-crossing", path: 0, index: 0 });
  return problems;
}

/** The longer side of the rectangle round the points, mm. */
function spread({ points }: Path): number {
  let [minX, minY, maxX, maxY] = [points[0]!.x, points[0]!.y, points[0]!.x, points[0]!.y];
  for (const { x, y } of points) {
    [minX, maxX] = [Math.min(minX, x), Math.max(maxX, x)];
    [minY, maxY] = [Math.min(minY, y), Math.max(maxY, y)];
  }
  return Math.max(maxX - minX, maxY - minY);
}
