import { handDistances } from "../guided/hand-distances.ts";
import type { Caution } from "./caution.ts";

const { usual, least } = handDistances;

/** What every cut along a template asks of whoever makes it, on a shaper or a router. Sources are cited, not quoted. */
const guidedCautions: readonly Caution[] = [
  {
    signal: "DANGER",
    text: "NEVER CLIMB: FEED ONLY AS THE ARROWS SHOW, AGAINST THE ROTATION, AND NEVER BACK OUT OF A CUT",
    source: "S: 29 CFR 1910.213, HSE WIS18; THE MACHINE'S MANUAL COMES FIRST",
  },
  {
    signal: "WARNING",
    text: `HANDS ON THE HANDHOLDS ONLY, ${usual} FROM THE CUTTER; NEVER UNDER ${least}`,
    source: "S: OLDER MANUALS, NEWER ONES THE LESSER FIGURE",
  },
  {
    signal: "WARNING",
    text: "START ON THE RUN-IN, GUIDE ON THE TEMPLATE BEFORE THE CUTTER MEETS WOOD, NEVER AT A CORNER",
    source: "S: PUBLISHED SHAPER AND ROUTER GUIDANCE",
  },
  {
    signal: "WARNING",
    text: "ISOLATE THE MACHINE BEFORE CHANGING OR MEASURING CUTTER OR GUIDE; GUARD ALL OF THE CUTTER BUT ITS WORKING PART",
    source: "S: 29 CFR 1910.212, 1910.213(a) AND (s)",
  },
  {
    signal: "WARNING",
    text: "TURN THE CUTTER BY HAND ALL ALONG BEFORE THE FIRST CUT: NOTHING OF FIXTURE, CLAMPS OR SCREWS MAY TOUCH IT",
    source: "G: DEFAULT, CONFIRM",
  },
  {
    signal: "CAUTION",
    text: "HARDWOOD DUST AND NOISE: EXTRACT AT THE CUTTER, PROTECT LUNGS, EYES AND EARS",
    source: "S: NIOSH 1 MG/M3 OF DUST, HSE WIS13",
  },
];

/** The cautions of a router and its templates, for every sheet made for one; the gravest first. */
export const routerCautions: readonly Caution[] = [
  ...guidedCautions.slice(0, -1),
  {
    signal: "WARNING",
    text: "A BIT OVER ITS SPEED BREAKS UP: SET THE SPEED THAT STANDS HERE, OR THE BIT'S OWN MARK IF THAT IS LOWER",
    source: "S: PUBLISHED CHARTS; EN 847-1",
  },
  ...guidedCautions.slice(-1),
];
