import { leastRadius } from "../../geometry/path-measures/least-radius.ts";
import { plain } from "../../workshop/guided/fault.ts";
import type { SawnRule } from "./sawn-check.ts";

/** Whether the chosen blade follows every place of a part's saw lines. Found: the tightest radius, mm, 0 at a corner. */
export const partSawTight: SawnRule = {
  name: "saw.tight",
  of: ({ cuts: { saw, sawn } }) => {
    const source = "published blade charts, the larger figure where they disagree";
    const lines = sawn.kind === "ok" ? sawn.lines : [];
    const bends = lines
      .map(({ path }) => leastRadius(path))
      .flatMap((bend) => (bend.kind === "ok" ? [bend.radius] : []));
    const limit = saw.kind === "ok" ? saw.blade.radius : 0;
    const found = Math.min(...bends, ...(bends.length === 0 ? [limit] : []));
    const marked = sawn.kind === "ok" ? sawn.tight : [];
    const closed = marked.filter(({ relief }) => relief.kind === "none").length;
    const without = closed === 0 ? "" : `, ${closed} of them without a straight way in`;
    const tight = found < limit - 1e-6;
    return {
      ...{ status: tight ? "attend" : "pass", stake: "spoilage", unit: "mm", found, limit, source },
      why: tight
        ? `${marked.length} places are tighter than the ${plain(limit)} mm that the blade follows${without}: make the relief cuts first, or fit a narrower blade`
        : "the blade follows every place of the lines",
    };
  },
};
