import { handDistances } from "../guided/hand-distances.ts";
import type { Caution } from "./caution.ts";
import { guidedCautions } from "./guided.ts";

const { usual, least } = handDistances;

/** The cautions of a shaper that is fed by hand along a template that lies over or under the work, for every sheet made for one; the gravest first. */
export function shaperCautions(template: "over" | "under"): readonly Caution[] {
  return [...first, collar[template], ...guidedCautions.slice(-1)];
}

/** What is to be known of a collar over the cutter, and of one under it. */
const collar: { readonly [template in "over" | "under"]: Caution } = {
  over: {
    signal: "WARNING",
    text: "COLLAR OVER THE CUTTER, TEMPLATE ON TOP OF THE WORK: THE WORK COVERS THE CUTTER; A COLLAR UNDER IT DRIVES WORK THAT LIFTS INTO THE CUTTER",
    source: "S: MAKERS' MANUALS ADVISE AGAINST A COLLAR UNDER THE CUTTER",
  },
  under: {
    signal: "WARNING",
    text: "COLLAR UNDER THE CUTTER, TEMPLATE UNDER THE WORK: NOTHING COVERS THE CUTTER BUT ITS GUARD, AND LIFTING THE FIXTURE DRIVES IT INTO THE CUTTER; KEEP IT DOWN OVER ALL OF ITS WAY",
    source: "S: MAKERS' MANUALS ADVISE AGAINST IT, THE SHOP'S FILE ALLOWS IT",
  },
};

const first: readonly Caution[] = [
  ...guidedCautions.slice(0, 1),
  {
    signal: "WARNING",
    text: `HANDS ON THE HANDHOLDS ONLY, ${usual} FROM THE CUTTER; NEVER UNDER ${least}`,
    source: "S: OLDER MANUALS, NEWER ONES THE LESSER FIGURE",
  },
  ...guidedCautions.slice(1, -1),
  {
    signal: "WARNING",
    text: "TOOL OF LIMITED PROJECTION, MARKED FOR MANUAL FEED, LOCKED AND TURNED BY HAND BEFORE IT RUNS",
    source: "S: EN 847-1, HSE WIS18 AND WIS37, 29 CFR 1910.213(m)",
  },
];
