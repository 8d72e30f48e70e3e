import { frequency } from "../order/pitch.ts";
import { tensionFromMass } from "../order/string-mass.ts";
import { step } from "../step/step.ts";

/** String length in mm; the pitch standard, the frequency of A4 in Hz; per string the pitch in semitones above A4 and the mass per length in g/m. */
export type TensionInput = {
  readonly stringLength: number;
  readonly a4: number;
  readonly strings: readonly { readonly semitones: number; readonly mass: number }[];
};

/** Per string its pitch in Hz and its tension in N. */
export type Tensions = { readonly pitches: readonly number[]; readonly tensions: readonly number[] };

/** Tension of a string at pitch: T = mu (2 L f)², mu in kg/m, L in m, f in Hz (Mersenne's law). */
export const stringTensions = step(
  "physics.tension",
  1,
  ({ stringLength, a4, strings }: TensionInput): Tensions => {
    const pitches = strings.map(({ semitones }) => frequency(semitones, a4));
    return {
      pitches,
      tensions: strings.map(({ mass }, i) => tensionFromMass(mass, stringLength, pitches[i]!)),
    };
  },
);
