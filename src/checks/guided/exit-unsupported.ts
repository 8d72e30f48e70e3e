import type { Path } from "../../geometry/path.ts";
import { directionOn } from "../../geometry/path-measures/segment-places.ts";
import type { Point } from "../../geometry/point.ts";
import { reversedPath } from "../../geometry/reversed-path.ts";
import { segmentLength, segmentsOf } from "../../geometry/segment.ts";
import { tolerance } from "../../geometry/tolerance.ts";
import { plain } from "../../workshop/guided/fault.ts";
import type { Feed } from "../../workshop/guided/feed.ts";
import { type FixtureRule, untried } from "./fixture-check.ts";
import { runEnds } from "./run-ends.ts";

/** Up to which angle to the fibres an edge is cut along them, and over which across them, degrees (G: default, confirm). */
const angles = { along: 2, across: 60 } as const;

/**
 * Whether the cutter leaves the work where fibres are held from behind: not across end grain, nor against the grain, with nothing behind it.
 * Work lies with its fibres along x. Found: the angle between edge and fibres where the cut ends, degrees.
 */
export const exitUnsupported: FixtureRule = {
  name: "exit.unsupported",
  of: (fixture) => {
    const usual = {
      ...({ stake: "spoilage", unit: "deg", limit: angles.across } as const),
      source: "published shaper guidance: leave 6 and trim later; angles 2 and 60: default, confirm",
    };
    const { run, feed } = fixture;
    if (feed === null) return untried(usual, "edge.none");
    const { at, way } = runEnds(run.path, feed.way).end;
    const found = (Math.atan2(Math.abs(way.y), Math.abs(way.x)) * 180) / Math.PI;
    // The wood is on the left of the run, so out of it leads to the right of the way that a cut along it goes.
    const side = feed.way === "along" ? 1 : -1;
    const [out, forward] = [side * way.y, way.x];
    const against = found > angles.along && out * forward < 0;
    const splits = found > angles.across || against;
    const limit = found > angles.across ? angles.across : angles.along;
    const backed =
      fixture.waste[feed.way === "along" ? 1 : 0] > 0 || goesOn(fixture.outline, at, way, feed.way);
    const where = found > angles.across ? "across end grain" : "against the grain";
    return {
      ...{ ...usual, status: splits && !backed ? "attend" : "pass", found, limit },
      why: splits
        ? backed
          ? `the cut ends ${where}, with wood behind it`
          : `the cut ends ${where} at ${plain(at.x)}, ${plain(at.y)}, where it splits out: leave 6 mm there and trim them later, or clamp waste behind`
        : "the cut ends along or with the grain",
    };
  },
};

/** Whether an outline goes on past a place without turning off from a direction: the wood beyond holds the fibres, cut in another set-up. */
function goesOn(outline: Path, at: Point, toward: Point, way: Feed["way"]): boolean {
  const walked = way === "along" ? outline : reversedPath(outline);
  return segmentsOf(walked).some((segment) => {
    const next = directionOn(segment, 0);
    const begins = Math.hypot(segment.from.x - at.x, segment.from.y - at.y) < tolerance.contact;
    return begins && segmentLength(segment) > 1e-6 && next.x * toward.x + next.y * toward.y > turnsOff;
  });
}

/** The cosine of the turn from which on an outline has a corner, 30 degrees. */
const turnsOff = Math.cos(Math.PI / 6);
