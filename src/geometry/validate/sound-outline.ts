import { type Chain, chainOf } from "../arrangement/chain.ts";
import { loopArea } from "../arrangement/loop-area.ts";
import type { Path } from "../path.ts";
import { tolerance } from "../tolerance.ts";
import { isSimple } from "./is-simple.ts";
import { pointProblems } from "./point-problems.ts";
import type { Problem } from "./problem.ts";

/** What was found of an outline: its problems, its edges about its first point, and its signed area, mm². */
export type Soundness = {
  readonly problems: readonly Problem[];
  readonly chain: Chain;
  readonly area: number;
};

const none: Chain = { edges: [], starts: [] };

/** Looks an outline over; the edges are none where its points are bad. */
export function soundOutline(path: Path): Soundness {
  const problems: Problem[] = path.closed ? [] : [{ code: "open", path: 0, index: 0 }];
  problems.push(...pointProblems(path, 0));
  if (problems.some(({ code }) => code !== "repeated-point")) return { problems, chain: none, area: 0 };
  const { x, y } = path.points[0]!;
  const chain = chainOf([path], x, y);
  const area = loopArea(chain.edges);
  if (Math.abs(area) <= tolerance.exact * spread(chain))
    problems.push({ code: "no-area", path: 0, index: 0 });
  else if (!isSimple(chain, area > 0 ? 1 : -1)) problems.push({ code: "self-crossing", path: 0, index: 0 });
  return { problems, chain, area };
}

/** The longer side of the rectangle round the edges, mm. */
function spread({ edges }: Chain): number {
  let [minX, minY, maxX, maxY] = [0, 0, 0, 0];
  for (const edge of edges) {
    minX = Math.min(minX, edge.minX);
    minY = Math.min(minY, edge.minY);
    maxX = Math.max(maxX, edge.maxX);
    maxY = Math.max(maxY, edge.maxY);
  }
  return Math.max(maxX - minX, maxY - minY);
}
