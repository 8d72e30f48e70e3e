import type { Point } from "../../geometry/point.ts";
import { polygonRound } from "../../geometry/polygon-round.ts";
import { listsApart } from "../../geometry/solid/segments-apart.ts";
import { cornersOf, edgesOf } from "./edges-of.ts";
import type { Ground } from "./ground.ts";

/**
 * How far places reach past each border of a part's wood, mm, 0 where none does: one that lies outside is taken to be past the border that is nearest
 * to it.
 */
export function pastBorders(
  { within, borders }: Pick<Ground, "within" | "borders">,
  places: readonly Point[],
): number[] {
  const corners = cornersOf(within);
  const outside = places.filter((place) => !polygonRound(corners, place));
  const past = borders.map(() => 0);
  if (outside.length === 0) return past;
  const edges = borders.map(({ path }) => edgesOf(path));
  for (const { x, y } of outside) {
    const here = { from: { x, y, z: 0 }, to: { x, y, z: 0 } };
    const away = edges.map((list) => listsApart([here], list));
    const nearest = away.indexOf(Math.min(...away));
    past[nearest] = Math.max(past[nearest]!, away[nearest]!);
  }
  return past;
}
