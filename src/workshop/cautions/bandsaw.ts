import type { Caution } from "./caution.ts";

/** How far over the work a bandsaw's upper guide may stand, and how near to the blade fingers may come, mm (S). */
export const bandsawDistances = { guide: 13, fingers: 100 } as const;

/**
 * The cautions of a bandsaw, for every sheet made for one. Sources are cited, not quoted; sources differ on both distances,
 * and the machine's manual may ask for less room under the guide or more round the blade.
 */
export const bandsawCautions: readonly Caution[] = [
  {
    signal: "WARNING",
    text: "THE BLADE CUTS FINGERS OFF: KEEP THEM 100 OR MORE FROM IT, AND PUSH WITH A STICK WHERE THE CUT ENDS",
    source: "S: PUBLISHED BANDSAW GUIDANCE, HSE WIS31",
  },
  {
    signal: "WARNING",
    text: "UPPER GUIDE NO MORE THAN ABOUT 13 OVER THE WORK; BLADE GUARDED BUT FOR THE WORKING PART",
    source: "S: 29 CFR 1910.213(I), HSE WIS31",
  },
  {
    signal: "WARNING",
    text: "ISOLATE THE MACHINE BEFORE THE BLADE IS CHANGED OR AN OFFCUT TAKEN FROM BESIDE IT",
    source: "S: 29 CFR 1910.213(S), HSE WIS31",
  },
  {
    signal: "WARNING",
    text: "LAY NOTHING ROUNDED ON THE TABLE: IT ROLLS AND IS DRAWN IN. THE WORK LIES FLAT ALONG THE CUT",
    source: "G: DEFAULT, CONFIRM",
  },
  {
    signal: "CAUTION",
    text: "HARDWOOD DUST AND NOISE: EXTRACT AT THE SAW, WEAR A MASK AND EAR DEFENDERS",
    source: "S: NIOSH 1 MG/M3, HSE WIS13",
  },
];
