import { leastRadius } from "../geometry/path-measures/least-radius.ts";
import type { Check } from "./check.ts";
import { sawFiles } from "./saw-files.ts";

/** Whether the chosen blade follows every place of the neck's saw lines. Found: the tightest radius, mm, 0 at a corner. */
export const sawTight: Check = {
  id: "saw.tight.neck",
  of: ({ sawing: { cuts } }) => {
    const usual = { stake: "spoilage", subject: "neck", unit: "mm", holds: sawFiles } as const;
    const source = "published blade charts, the larger figure where they disagree";
    const outlines = [cuts.plan, cuts.side].flatMap((sawn) => (sawn.kind === "ok" ? [sawn] : []));
    const bends = outlines
      .flatMap(({ lines }) => lines.map(({ path }) => leastRadius(path)))
      .flatMap((bend) => (bend.kind === "ok" ? [bend.radius] : []));
    const limit = cuts.saw.kind === "ok" ? cuts.saw.blade.radius : 0;
    const found = Math.min(...bends, ...(bends.length === 0 ? [limit] : []));
    const marked = outlines.flatMap(({ tight }) => tight);
    const closed = marked.filter(({ relief }) => relief.kind === "none").length;
    const without = closed === 0 ? "" : `, ${closed} of them without a straight way in`;
    const tight = found < limit - 1e-6;
    return {
      ...{ ...usual, status: tight ? "attend" : "pass", found, limit, source },
      why: tight
        ? `${marked.length} places are tighter than the blade follows${without}: make the relief cuts first, or raise head.shoulder, or fit a narrower blade`
        : "the blade follows every place of both lines",
    };
  },
};
