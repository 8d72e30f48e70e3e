import type { Path } from "../../geometry/path.ts";
import { nearestPlace } from "../../geometry/path-measures/nearest-place.ts";
import { directionOn } from "../../geometry/path-measures/segment-places.ts";
import { segmentLength, segmentsOf } from "../../geometry/segment.ts";
import { plain } from "../../workshop/guided/fault.ts";
import { type FixtureRule, untried } from "./fixture-check.ts";

/**
 * Whether the guided edge goes on beyond the work at both ends, straight and tangent to it. Found: the lesser of the two lengths, mm, 0
 * where it turns off.
 */
export const runInMissing: FixtureRule = {
  name: "run-in.missing",
  of: ({ edge, run, waste }) => {
    const usual = {
      ...({ stake: "injury", unit: "mm", limit: 50 } as const),
      source: "published shaper guidance; lengths: default, confirm",
    };
    if (edge?.kind !== "ok") return untried(usual, "edge.none");
    const { edge: written } = edge;
    // Wood that goes on beyond the run is work too.
    const past = (["start", "end"] as const).map((end, i) => beyond(written, run.path, end) - waste[i]!);
    const found = Math.max(0, Math.min(...past));
    const short = found < usual.limit - 1e-6;
    return {
      ...{ ...usual, status: short ? "refuse" : "pass", found },
      why: short
        ? `the guided edge goes on only ${plain(found)} mm beyond the work: lead it on 50 to 75 mm at both ends`
        : `the guided edge is led on ${plain(found)} mm or more beyond the work at both ends`,
    };
  },
};

/** How far the written edge goes on straight past an end of the finished one, in its direction there, mm. */
function beyond(edge: Path, run: Path, end: "start" | "end"): number {
  const [written, finished] = [edge, run].map((path) =>
    segmentsOf(path).filter((one) => segmentLength(one) > 1e-6),
  );
  const [own, last] = end === "start" ? [written![0]!, finished![0]!] : [written!.at(-1)!, finished!.at(-1)!];
  if (own.kind !== "line") return 0;
  const share = end === "start" ? 0 : 1;
  const [a, b] = [directionOn(own, share), directionOn(last, share)];
  if (a.x * b.x + a.y * b.y < 1 - 1e-9) return 0;
  const tip = end === "start" ? own.from : own.to;
  const foot = end === "start" ? last.from : last.to;
  const along = (tip.x - foot.x) * a.x + (tip.y - foot.y) * a.y;
  const past = end === "start" ? 0 - along : along;
  // A line that is one with the finished edge's own counts only beyond that.
  const near = nearestPlace(run, tip);
  return near.kind === "ok" && past > 0 ? past : 0;
}
