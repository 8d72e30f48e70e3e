import { areaMoments } from "../../geometry/path-measures/area-moments.ts";
import { centroid } from "../../geometry/path-measures/centroid.ts";
import type { Point } from "../../geometry/point.ts";
import type { SolidMoments } from "../../geometry/solid/slices.ts";
import { windingsOf } from "../../geometry/winding-at.ts";
import { alongBore, type Drilled } from "../../instrument/drilled.ts";
import type { Pocket } from "../../instrument/pocket.ts";
import type { Sunken } from "../../instrument/sunken.ts";
import { momentsAt } from "./moments.ts";

/**
 * What is sunk takes out of a part so thick, in its own axes. Of pockets one within another each counts from the floor of the shallower, and what comes from
 * the other face ends there: so each bit of wood is counted once where pockets lie one within another or apart. A bore counts by the stretches
 * of its axis in the wood, which is exact between planes.
 */
export function sunkenMoments({ pockets, drilled }: Sunken, thickness: number): SolidMoments[] {
  const shapes = pockets.map((pocket) => ({
    pocket,
    inside: windingsOf([pocket.path]),
    at: middleOf(pocket),
  }));
  const reach = ({ depth }: Pocket) => (depth === "through" ? thickness : depth);
  const own = shapes.map(({ pocket, at }, i): SolidMoments => {
    const round = shapes.filter(({ inside }, k) => k !== i && inside(at) !== 0).map((one) => one.pocket);
    const same = round.filter(
      ({ from, depth }) => from === pocket.from && reach({ ...pocket, depth }) < reach(pocket),
    );
    const opposite = round.filter(({ from }) => from !== pocket.from);
    const begins = Math.max(0, ...same.map(reach));
    const ends = Math.min(reach(pocket), thickness - Math.max(0, ...opposite.map(reach)));
    const { area, x, y } = areaMoments(pocket.path);
    const deep = Math.max(0, ends - begins);
    const down = (begins + ends) / 2;
    const z = pocket.from === "front" ? -down : down - thickness;
    const volume = Math.abs(area) * deep;
    return momentsAt(volume, { x: x / area, y: y / area, z });
  });
  return [...own, ...drilled.flatMap(drilledMoments)];
}

function middleOf({ path }: Pocket): Point {
  const found = centroid(path);
  return found.kind === "ok" ? found.point : path.points[0]!;
}

function drilledMoments(bore: Drilled): SolidMoments[] {
  return bore.wood.map(([from, to]) =>
    momentsAt((Math.PI / 4) * bore.diameter ** 2 * (to - from), alongBore(bore, (from + to) / 2)),
  );
}
