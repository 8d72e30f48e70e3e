import { pathLength } from "../../geometry/measure.ts";
import type { Path } from "../../geometry/path.ts";
import { directionOn, distanceTo, pointOn } from "../../geometry/path-measures/segment-places.ts";
import { segmentLength, segmentsOf } from "../../geometry/segment.ts";
import type { Spindle } from "../../order/shop.ts";
import { againstRotation, wayAlong } from "../guided/direction.ts";
import type { Feed } from "../guided/feed.ts";
import type { Arrow } from "../guided/fixture.ts";

/** An arrow about every so many mm, and two at least. */
const arrows = { apart: 60, least: 2 } as const;

/**
 * The feed round an opening's guided edge, which has the template on its left. Arrows stand at the middles of its longest lines and arcs, `aside` of them inside it, mm,
 * nearer where another side would be as near: the way there would be in doubt.
 */
export function openingFeed(
  edge: Path,
  { rotation, moves }: Pick<Spindle, "rotation" | "moves">,
  aside: number,
): Feed {
  const count = Math.max(arrows.least, Math.round(pathLength(edge) / arrows.apart));
  const all = segmentsOf(edge);
  const pieces = all.map((segment, i) => ({ segment, i, length: segmentLength(segment) }));
  const longest = pieces
    .sort((a, b) => b.length - a.length || a.i - b.i)
    .slice(0, count)
    .sort((a, b) => a.i - b.i);
  const tool = longest.map(({ segment }): Arrow => {
    const [point, direction] = [pointOn(segment, 0.5), directionOn(segment, 0.5)];
    const normal = { x: direction.y, y: 0 - direction.x };
    const inside = (far: number) => ({ x: point.x + normal.x * far, y: point.y + normal.y * far });
    const ways = [1, 0.7, 0.5, 0.3, 0.1].map((share) => share * aside);
    const far = ways.find((one) => distanceTo(all, inside(one)) > one - 1e-6) ?? ways.at(-1)!;
    return { at: inside(far), way: againstRotation(normal, { rotation, moves }).tool };
  });
  return { way: wayAlong(rotation), moves, rotation, tool };
}
