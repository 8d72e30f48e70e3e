import type { Path } from "../../geometry/path.ts";
import { nearestPlace } from "../../geometry/path-measures/nearest-place.ts";
import type { Point } from "../../geometry/point.ts";
import type { Arrow, Fixture } from "../../workshop/guided/fixture.ts";
import { type EdgeWith, type FixtureRule, untried } from "./fixture-check.ts";

/**
 * Whether every arrow runs against the rotation. Found: how many climb. The tooth that touches the wood is turned about the cutter's
 * middle, which lies beyond the edge where the arrow stands; against the rotation the tool goes the way that it moves.
 */
export const feedClimb: FixtureRule<
  Pick<Fixture, "feed" | "setUp"> & { readonly edge: EdgeWith<{ readonly edge: Path }> }
> = {
  name: "feed.climb",
  of: ({ edge, feed, setUp }) => {
    const usual = {
      ...({ stake: "injury", unit: "", limit: 0 } as const),
      source: "29 CFR 1910.213; HSE WIS18; the machine's manual",
    };
    if (edge?.kind !== "ok" || feed === null || setUp === null) return untried(usual, "edge.none");
    const { rotation, id } = setUp.machine;
    const climbing = feed.tool.filter((arrow) => climbs(edge.edge, arrow, rotation));
    const found = climbing.length;
    if (feed.tool.length === 0)
      return {
        ...usual,
        status: "refuse",
        found: 1,
        why: "no arrow says which way to feed: nothing is cut without one",
      };
    return {
      ...{ ...usual, status: found > 0 ? "refuse" : "pass", found },
      why:
        found > 0
          ? `${found} arrows run with the rotation of ${id}: feed the other way`
          : `every arrow runs against the rotation of ${id}`,
    };
  },
};

function climbs(edge: Path, { at, way }: Arrow, rotation: "ccw" | "cw"): boolean {
  const nearest = nearestPlace(edge, at);
  if (nearest.kind !== "ok") return true;
  const tooth: Point = { x: nearest.point.x - at.x, y: nearest.point.y - at.y };
  const turn = rotation === "ccw" ? 1 : -1;
  // The tooth's own motion: a quarter turn from its arm.
  return (0 - tooth.y * way.x + tooth.x * way.y) * turn <= 0;
}
