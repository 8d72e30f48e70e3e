import { plain } from "../../workshop/guided/fault.ts";
import { type FixtureRule, ofSetUp } from "../guided/fixture-check.ts";
import type { OneOpening } from "./inside-check.ts";

/**
 * Whether a bush clears its bit and is shorter than the template is thick, or more than half of a bearing or a pin bears on that from the first pass to the
 * last. Found: the bush's diameter or the template's thickness, or how much bears, mm.
 */
export const insideBearing: FixtureRule<OneOpening> = ofSetUp<OneOpening>(
  "guide.bearing",
  {
    ...{ stake: "injury", unit: "mm", limit: 0 },
    source:
      "published router guidance: a bit clears its bush by 1.6, the template stands over it by 1, more than half bears",
  },
  ({ cutter, guide }, { sheet, passes }) => {
    const [clears, stands] = [cutter.diameter + 1.6, guide.height + 1];
    if (guide.kind === "bush" && guide.diameter < clears - 1e-6)
      return {
        ...{ status: "refuse", found: guide.diameter, limit: clears },
        why: `${cutter.id} doesn't clear ${guide.id}: take a bush over ${plain(clears)} mm across`,
      };
    if (sheet?.kind !== "ok") return { status: "attend", found: 0, why: "nothing to try: see stock" };
    const thick = sheet.thickness;
    if (guide.kind === "bush") {
      const thin = thick < stands - 1e-6;
      return {
        ...{ status: thin ? "refuse" : "pass", found: thick, limit: stands },
        why: thin
          ? `${guide.id} stands out ${plain(guide.height)} mm and would touch the work under a template of ${plain(thick)}: take a sheet of ${plain(stands)} or more`
          : `${guide.id} stands out ${plain(guide.height)} mm in a template of ${plain(thick)}: measure its bore, which clears the bit by 1.6 on diameter`,
      };
    }
    // A bearing on the shank goes down with the bit: its foot is the cutting length above the bit's end.
    const foot = guide.kind === "bearing" ? cutter.length - (passes[0] ?? 0) : 0;
    const bears = Math.min(foot + guide.height, thick) - foot;
    const limit = guide.height / 2;
    const good = bears > limit;
    return {
      ...{ status: good ? "pass" : "refuse", found: Math.max(0, bears), limit },
      why: good
        ? `${plain(bears)} of ${guide.id}'s ${plain(guide.height)} mm bear on the template in the first pass`
        : `no more than half of ${guide.id}, ${plain(guide.height)} mm high, bears on the template in the first pass: take a shorter bit, a thicker sheet or a bush`,
    };
  },
);
