import { pathLength } from "../../geometry/measure.ts";
import { placeAlong } from "../../geometry/path-measures/place-along.ts";
import type { Point } from "../../geometry/point.ts";
import { windingsOf } from "../../geometry/winding-at.ts";
import type { Inside } from "../../workshop/inside/inside.ts";
import { untried } from "../guided/fixture-check.ts";
import { shareOn } from "../guided/share-on.ts";
import type { InsideRule } from "./inside-check.ts";

/** How many places of an opening's edge are tried, and how many rings and rays a base is looked at in. */
const looks = { round: 12, rings: 6, rays: 16 } as const;

/** Whether a hand-held router's base rests on more than half of itself wherever its guide touches an edge. Found: the least share that lies on the plate. */
export const baseRests: InsideRule = {
  name: "base.rests",
  of: (inside) => {
    const usual = {
      ...({ stake: "injury", unit: "", limit: 0.5 } as const),
      source: "general trade knowledge, more than half: default, confirm",
    };
    const { setUp, layout } = inside;
    if (setUp === null || layout === null) return untried(usual, "edge.none");
    const { machine } = setUp;
    if (machine.kind !== "router" || machine.mount !== "hand")
      return { ...usual, status: "pass", found: 1, why: `${machine.id} stands by itself` };
    if (machine.base === undefined)
      return {
        ...{ ...usual, status: "attend", found: 0 },
        why: `the shop's file doesn't say how wide the base of ${machine.id} is: measure it, and write it as base`,
      };
    const found = Math.min(...leastShares(inside, machine.base / 2));
    const tips = found <= usual.limit;
    const share = `${Math.floor(found * 100)} %`;
    return {
      ...{ ...usual, status: tips ? "refuse" : "pass", found },
      why: tips
        ? `only ${share} of the base of ${machine.id} rests on the template: bridge the opening by an outrigger as thick as that, or widen the plate`
        : `${share} of the base of ${machine.id} rests on the template at least`,
    };
  },
};

/** For each opening the least share of a base of a radius that rests on its plate, from the plunge and from places all round. */
function leastShares({ openings, plates, layout, setUp }: Inside, radius: number): number[] {
  const guide = setUp!.guide.diameter / 2;
  return openings.map(({ edge }, i) => {
    if (edge?.kind !== "ok") return 0;
    const holes = openings.flatMap((other, k) =>
      plates![k] === plates![i] && other.edge?.kind === "ok" ? [windingsOf([other.edge.edge])] : [],
    );
    const plate = windingsOf([layout!.plate]);
    const rests = (at: Point) => plate(at) !== 0 && holes.every((hole) => hole(at) === 0);
    const length = pathLength(edge.edge);
    const round = Array.from({ length: looks.round }, (_, n) => {
      const place = placeAlong(edge.edge, (length * n) / looks.round);
      if (place.kind !== "ok") return edge.plunge.at;
      const { point, direction } = place;
      return { x: point.x + direction.y * guide, y: point.y - direction.x * guide };
    });
    return Math.min(...[edge.plunge.at, ...round].map((middle) => shareOn(middle, radius, rests, looks)));
  });
}
