import type { Caution } from "./caution.ts";

/** How far over the work a bandsaw's upper guide may stand, and how near to the blade fingers may come, mm (S). */
export const bandsawDistances = { guide: 13, fingers: 100 } as const;

const { guide, fingers } = bandsawDistances;

/**
 * The cautions of a bandsaw, for every sheet made for one. Sources are cited, not quoted; they differ on both distances, and
 * the machine's manual may ask for less room under the guide or more round the blade: it comes first.
 */
export const bandsawCautions: readonly Caution[] = [
  {
    signal: "WARNING",
    text: `KEEP FINGERS ${fingers} OR MORE FROM THE BLADE; PUSH WITH A STICK WHERE A CUT ENDS`,
    source: "S: PUBLISHED BANDSAW GUIDANCE",
  },
  {
    signal: "WARNING",
    text: `UPPER GUIDE WITHIN ABOUT ${guide} OF THE WORK; BLADE GUARDED BUT FOR THE WORKING PART`,
    source: "S: PUBLISHED BANDSAW GUIDANCE; GUARD: 29 CFR 1910.213(i)",
  },
  {
    signal: "WARNING",
    text: "ISOLATE THE MACHINE BEFORE CHANGING THE BLADE",
    source: "S: 29 CFR 1910.213(a) AND (s), HSE WIS31",
  },
  {
    signal: "WARNING",
    text: "LAY NOTHING ON THE TABLE THAT IS ROUNDED ALREADY: IT ROLLS AND THE BLADE DRAWS IT IN",
    source: "G: DEFAULT, CONFIRM",
  },
  {
    signal: "CAUTION",
    text: "HARDWOOD DUST AND NOISE: EXTRACT AT THE SAW, PROTECT LUNGS AND EARS",
    source: "S: NIOSH 1 MG/M3 OF DUST, HSE WIS13",
  },
];
