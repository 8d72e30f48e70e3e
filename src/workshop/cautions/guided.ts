import type { Caution } from "./caution.ts";

/** What every cut along a template asks of whoever makes it, on a shaper or a router. Sources are cited, not quoted. */
export const guidedCautions: readonly Caution[] = [
  {
    signal: "DANGER",
    text: "NEVER CLIMB: FEED ONLY AS THE ARROWS SHOW, AGAINST THE ROTATION, AND NEVER BACK OUT OF A CUT",
    source: "S: 29 CFR 1910.213, HSE WIS18; THE MACHINE'S MANUAL COMES FIRST",
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
    signal: "WARNING",
    text: "NOTHING FIXED BESIDE THE CUTTER: WORK OR OFFCUT NEVER BETWEEN IT AND A FENCE OR STOP THAT DOESN'T MOVE WITH THE WORK",
    source: "S: PUBLISHED SHAPER AND ROUTER GUIDANCE",
  },
  {
    signal: "CAUTION",
    text: "HARDWOOD DUST AND NOISE: EXTRACT AT THE CUTTER, PROTECT LUNGS, EYES AND EARS",
    source: "S: NIOSH 1 MG/M3 OF DUST, HSE WIS13",
  },
];
