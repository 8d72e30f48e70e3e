import type { Model } from "../workshop/model.ts";
import type { Check, Finding } from "./check.ts";
import { sawFiles } from "./saw-files.ts";

const usual = { subject: "neck", holds: sawFiles } as const;
const none = "the shop has no such saw: see saw.missing";

/** Whether the shop has a bandsaw with a blade whose least radius is known. Found: how many of its bandsaws have one. */
export const sawMissing: Check = {
  id: "saw.missing",
  of: ({ sawing: { cuts } }) => {
    const there = cuts.saw.kind === "ok";
    return {
      ...usual,
      ...{ status: there ? "pass" : "refuse", stake: "spoilage", found: there ? 1 : 0, limit: 1, unit: "" },
      why: there
        ? `sawn on ${cuts.saw.id} with its blade of ${cuts.saw.blade.width} mm`
        : "the shop has no bandsaw with a blade of at most 25.4 mm: add one to its machines, or saw elsewhere",
      source: "the shop's machines; published blade charts end at 25.4 mm",
    };
  },
};

/** Whether the blank goes under the saw's guide, in the higher of the two cuts. */
export const sawHeight: Check = {
  id: "saw.height",
  of: (model) =>
    against(model, "height", ({ found, fits }) => ({
      status: fits ? "pass" : "refuse",
      stake: "injury",
      why: fits
        ? "the blank goes under the saw's guide in both cuts"
        : `a blank ${found} mm high doesn't go under the guide: lower neck.allowance.face, neck.allowance.side or core.slope`,
    })),
};

/** Whether the blank passes between blade and column, in the wider of the two cuts, wherever it is turned. */
export const sawThroat: Check = {
  id: "saw.throat",
  of: (model) =>
    against(model, "throat", ({ found, fits }) => ({
      status: fits ? "pass" : "attend",
      stake: "spoilage",
      why: fits
        ? "the blank passes between blade and column"
        : `a blank ${found} mm across may not pass the column: try it with the saw isolated, or lower neck.allowance.side`,
    })),
};

type Judged = Pick<Finding, "status" | "stake" | "why">;

function against(
  { sawing: { cuts }, instrument: { neckBlank } }: Model,
  what: "height" | "throat",
  judge: (given: { found: number; fits: boolean }) => Judged,
): Omit<Finding, "id"> {
  // What stands up in one cut lies across in the other.
  const found = Math.max(neckBlank.width, neckBlank.thickness);
  const rest = { ...usual, found, unit: "mm", source: `the shop's own figure of its saw's ${what}` };
  if (cuts.saw.kind === "none") return { ...rest, status: "attend", stake: "spoilage", limit: 0, why: none };
  const limit = cuts.saw[what];
  return { ...rest, limit, ...judge({ found, fits: found <= limit }) };
}
