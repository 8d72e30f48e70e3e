import { plain } from "../../workshop/guided/fault.ts";
import { type FixtureRule, untried } from "./fixture-check.ts";
import { runEnds } from "./run-ends.ts";

/** How far from a cut's beginning a starting pin stands, mm (S), and how straight a run-in leads on, as a cosine: 2 degrees. */
const limits = { pin: [50, 100], straight: Math.cos((2 * Math.PI) / 180) } as const;

/**
 * Whether the cut begins against a run-in or a starting pin, and not at a corner. The guide must bear on straight edge before the cutter
 * reaches wood. Found: how long it does, mm.
 */
export const startCorner: FixtureRule = {
  name: "start.corner",
  of: ({ edge, run, feed, setUp, holding }) => {
    const usual = {
      ...({ stake: "injury", unit: "mm", limit: 0 } as const),
      source: "published shaper and router guidance: a pin 50 to 100 from the bit, or a run-in",
    };
    if (edge?.kind !== "ok" || feed === null || setUp === null) return untried(usual, "edge.none");
    const limit = setUp.cutter.diameter / 2;
    const { at, way } = runEnds(run.path, feed.way).start;
    const pin = (holding?.holes ?? []).find(({ what, at: hole }) => {
      const far = Math.hypot(hole.x - at.x, hole.y - at.y);
      return what.startsWith("starting pin") && far >= limits.pin[0] && far <= limits.pin[1];
    });
    const written = runEnds(edge.edge, feed.way).start;
    const straight = written.way.x * way.x + written.way.y * way.y >= limits.straight;
    const found =
      straight && !run.path.closed
        ? Math.max(0, (at.x - written.at.x) * way.x + (at.y - written.at.y) * way.y)
        : 0;
    const good = pin !== undefined || found >= limit - 1e-6;
    return {
      ...{ ...usual, status: good ? "pass" : "refuse", found, limit },
      why: good
        ? pin === undefined
          ? `the guide bears on ${plain(found)} mm of run-in before the cutter reaches wood`
          : `the cut begins against a starting pin`
        : `the cut begins at a corner at ${plain(at.x)}, ${plain(at.y)}: lead the edge on straight by ${plain(limit)} mm or more, or set a starting pin 50 to 100 mm from the bit`,
    };
  },
};
