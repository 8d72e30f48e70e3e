import { pathLength } from "../../geometry/measure.ts";
import type { Path } from "../../geometry/path.ts";
import { directionOn, pointOn } from "../../geometry/path-measures/segment-places.ts";
import { segmentLength, segmentsOf } from "../../geometry/segment.ts";
import type { Spindle } from "../../order/shop.ts";
import { againstRotation, wayAlong } from "../guided/direction.ts";
import type { Feed } from "../guided/feed.ts";
import type { Arrow } from "../guided/fixture.ts";

/** An arrow about every so many mm, and two at least; how far inside the edge they stand, mm. */
const arrows = { apart: 60, least: 2, aside: 2 } as const;

/**
 * The feed round an opening's guided edge, which has the template on its left. Arrows stand close inside the edge at the middles of its longest lines and arcs: in a
 * tight corner another side may be as near, and the way there would be in doubt.
 */
export function openingFeed(edge: Path, { rotation, moves }: Pick<Spindle, "rotation" | "moves">): Feed {
  const count = Math.max(arrows.least, Math.round(pathLength(edge) / arrows.apart));
  const pieces = segmentsOf(edge).map((segment, i) => ({ segment, i, length: segmentLength(segment) }));
  const longest = pieces
    .sort((a, b) => b.length - a.length || a.i - b.i)
    .slice(0, count)
    .sort((a, b) => a.i - b.i);
  const tool = longest.map(({ segment }): Arrow => {
    const [point, direction] = [pointOn(segment, 0.5), directionOn(segment, 0.5)];
    const normal = { x: direction.y, y: 0 - direction.x };
    const at = { x: point.x + normal.x * arrows.aside, y: point.y + normal.y * arrows.aside };
    return { at, way: againstRotation(normal, { rotation, moves }).tool };
  });
  return { way: wayAlong(rotation), moves, rotation, tool };
}
