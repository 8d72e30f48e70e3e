import type { Check } from "../check.ts";
import type { SawnRule } from "./sawn-check.ts";

const source = "published bandsaw guidance: the first offcut taped back, nothing rounded on the table";

/** Whether every cut has a flat face on the table. Found: how many have a rounded one. */
export const sawUnsupported: SawnRule = {
  name: "saw.unsupported",
  of: ({ sequence }) => {
    const round = sequence.filter(({ face }) => face === "rounded");
    const found = round.length;
    return {
      ...{ status: found > 0 ? "refuse" : "pass", stake: "injury", found, limit: 0, unit: "", source },
      why:
        found > 0
          ? `the ${round[0]!.onTable} is rounded and lies on the table while the ${round[0]!.cut} is sawn, where it rolls: saw before it is rounded, or bed it in a cradle`
          : "the face on the table is planed and flat in every cut",
    };
  },
};

/** Whether the second of the neck's two-way cuts has the first one's offcuts taped back under it. Found: how many cuts after the first lack them. */
export const neckUnsupported: Check = {
  id: "saw.unsupported.neck-saw-side",
  of: ({ sawing: { sequence } }) => {
    const found = sequence.slice(1).filter(({ tapedBack }) => tapedBack === "nothing").length;
    return {
      ...{
        status: found > 0 ? "refuse" : "pass",
        stake: "injury",
        subject: "neck",
        holds: ["neck-saw-side"],
      },
      ...{ found, limit: 0, unit: "", source },
      why:
        found > 0
          ? "the second cut has the first one's sawn side on the table, hollow and round: tape every offcut of the first cut back where it was"
          : "every offcut of the first cut is taped back, so that the second lies flat",
    };
  },
};
