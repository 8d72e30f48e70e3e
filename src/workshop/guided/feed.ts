import { pathLength } from "../../geometry/measure.ts";
import type { Path } from "../../geometry/path.ts";
import { placeAlong } from "../../geometry/path-measures/place-along.ts";
import type { Spindle } from "../../order/shop.ts";
import { againstRotation, wayAlong } from "./direction.ts";
import type { Arrow } from "./fixture.ts";

/**
 * Which way a cut runs: along its guided edge as that is written or back along it, arrows beside the edge that show the cutter's travel as
 * seen from the work, and the way in which what moves is pushed where the first of them stands.
 */
export type Feed = {
  readonly way: "along" | "back";
  readonly moves: Spindle["moves"];
  readonly rotation: Spindle["rotation"];
  readonly tool: readonly Arrow[];
};

/** How far apart arrows stand along an edge, about, mm. */
const apart = 60;

/** The feed along an edge with the template on its left; arrows stand `aside` of it, on the cutter's side, mm. */
export function feedAlong(
  edge: Path,
  { rotation, moves }: Pick<Spindle, "rotation" | "moves">,
  aside: number,
): Feed {
  const length = pathLength(edge);
  const count = Math.max(2, Math.round(length / apart));
  const tool = Array.from({ length: count }, (_, i) =>
    placeAlong(edge, (length * (i + 0.5)) / count),
  ).flatMap((place): Arrow[] => {
    if (place.kind !== "ok") return [];
    const { point, direction } = place;
    const normal = { x: direction.y, y: 0 - direction.x };
    const at = { x: point.x + normal.x * aside, y: point.y + normal.y * aside };
    return [{ at, way: againstRotation(normal, { rotation, moves }).tool }];
  });
  return { way: wayAlong(rotation), moves, rotation, tool };
}
