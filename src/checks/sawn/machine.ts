import { plain } from "../../workshop/guided/fault.ts";
import type { SawnJudged, SawnRule } from "./sawn-check.ts";

/** Whether the shop has a bandsaw with a blade whose least radius is known. Found: 1 where it has. */
export const partSawMissing: SawnRule = {
  name: "saw.missing",
  of: ({ cuts: { saw } }) => {
    const there = saw.kind === "ok";
    return {
      ...{ status: there ? "pass" : "refuse", stake: "spoilage", found: there ? 1 : 0, limit: 1, unit: "" },
      why: there
        ? `sawn on ${saw.id} with its blade of ${plain(saw.blade.width)} mm`
        : "the shop has no bandsaw with a blade of at most 25.4 mm: add one to its machines, or saw elsewhere",
      source: "the shop's machines; published blade charts end at 25.4 mm",
    };
  },
};

/** Whether the work goes under the saw's guide, tilted as it may lie. Found: how high it is, mm. */
export const partSawHeight: SawnRule = {
  name: "saw.height",
  of: ({ cuts: { saw }, sequence }) => {
    const found = Math.max(...sequence.map(({ work }) => work));
    const usual = { found, unit: "mm", source: "the shop's own figure of its saw's height" } as const;
    if (saw.kind === "none") return withoutSaw(usual);
    const fits = found <= saw.height;
    return {
      ...{ ...usual, status: fits ? "pass" : "refuse", stake: "injury", limit: saw.height },
      why: fits
        ? `work ${plain(found)} mm high goes under the guide of ${saw.id}`
        : `work ${plain(found)} mm high doesn't go under the guide of ${saw.id}: plane it thinner, or saw it elsewhere`,
    };
  },
};

/** Whether the blank passes between blade and column, however it is turned where a cut goes round. Found: what may lie there, mm. */
export const partSawThroat: SawnRule = {
  name: "saw.throat",
  of: ({ cuts: { saw }, blank: { minX, maxX, minY, maxY }, shape }) => {
    // A board's sides are sawn along it, and its ends with its length away from the column.
    const found = shape.kind === "board" ? maxY - minY : Math.hypot(maxX - minX, maxY - minY);
    const usual = { found, unit: "mm", source: "the shop's own figure of its saw's throat" } as const;
    if (saw.kind === "none") return withoutSaw(usual);
    const fits = found <= saw.throat;
    return {
      ...{ ...usual, status: fits ? "pass" : "attend", stake: "spoilage", limit: saw.throat },
      why: fits
        ? "the blank passes between blade and column"
        : `a blank ${plain(found)} mm across may not pass the column: try it with the saw isolated, or cut from both ends`,
    };
  },
};

function withoutSaw(usual: Pick<SawnJudged, "found" | "unit" | "source">): SawnJudged {
  return {
    ...usual,
    status: "attend",
    stake: "spoilage",
    limit: 0,
    why: "the shop has no such saw: see saw.missing",
  };
}
