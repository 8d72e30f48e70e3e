import { chainOf } from "../arrangement/chain.ts";
import { signedArea } from "../measure.ts";
import { outlinesOf, type Region } from "../region.ts";
import { tolerance } from "../tolerance.ts";
import { isSimple } from "./is-simple.ts";
import { pointProblems } from "./point-problems.ts";
import type { Problem } from "./problem.ts";

/**
 * Everything that is wrong with a region: each outline closed and finite with an area, outer ones counter-clockwise and
 * holes clockwise, none crossing itself or another, each hole within its piece. None where it is good; the empty region
 * is good. Outlines may touch. Problems name the outline by its number in `outlinesOf`. Never throws.
 */
export function validateRegion(region: Region): Problem[] {
  const outlines = outlinesOf(region);
  const problems = outlines.flatMap((path, which) => pointProblems(path, which));
  outlines.forEach((path, which) => {
    if (!path.closed) problems.push({ code: "open", path: which, index: 0 });
  });
  if (outlines.length === 0 || problems.some(({ code }) => code !== "repeated-point")) return problems;
  let which = 0;
  for (const { outer, holes } of region) {
    for (const path of [outer, ...holes]) {
      const area = signedArea(path);
      if (Math.abs(area) <= tolerance.exact ** 2) problems.push({ code: "no-area", path: which, index: 0 });
      else if (area > 0 !== (path === outer)) problems.push({ code: "wrong-winding", path: which, index: 0 });
      which++;
    }
  }
  if (problems.some(({ code }) => code !== "repeated-point")) return problems;
  const { x, y } = outlines[0]!.points[0]!;
  if (!isSimple(chainOf(outlines, x, y), 1)) problems.push({ code: "overlapping", path: 0, index: 0 });
  return problems;
}
