import { frequency, semitonesFromA4 } from "../../order/pitch.ts";
import { dimensionOf, type Spec } from "../../order/spec.ts";
import { tensionFromMass } from "../../order/string-mass.ts";
import type { Getters } from "../../step/lazy.ts";
import { step } from "../../step/step.ts";
import type { Store } from "../../step/store.ts";

/** String length in mm; the frequency of A4 in Hz; per plain wire its pitch in semitones above A4, mass in g/m and diameter in mm. */
export type WireInput = {
  readonly stringLength: number;
  readonly a4: number;
  readonly wires: readonly { readonly semitones: number; readonly mass: number; readonly diameter: number }[];
};

/** Tensile stress of plain wires at pitch, MPa: their tension over their whole section, since no winding shares it. */
export const wireStresses = step(
  "strings.wire-stress",
  1,
  ({ stringLength, a4, wires }: WireInput): number[] =>
    wires.map(({ semitones, mass, diameter }) => {
      const tension = tensionFromMass(mass, stringLength, frequency(semitones, a4));
      return tension / ((Math.PI / 4) * diameter ** 2);
    }),
);

/**
 * A plain wire whose strength is known: its string, its stress at pitch and its strength, MPa; and whether it is tuned to another
 * pitch than it is named for.
 */
export type Wire = {
  readonly name: string;
  readonly stress: number;
  readonly strength: number;
  readonly retuned: boolean;
};

/** The strings that are plain wires of known strength, highest first; a set may have none. */
export type Wires = { readonly wires: readonly Wire[] };

/** How the wires' stresses are worked out. */
export function wireGetters(spec: Spec, store: Store): Getters<Wires> {
  return {
    wires: () => {
      const known = spec.strings.filter(({ strength }) => strength !== null);
      const stresses = store.answer(wireStresses, {
        ...{ stringLength: dimensionOf(spec, "string.length"), a4: dimensionOf(spec, "pitch.standard") },
        wires: known.map(({ semitones, mass, diameter }) => ({ semitones, mass, diameter })),
      }).value;
      return known.map(({ name, strength, semitones }, i) => {
        const own = semitonesFromA4(name);
        const retuned = own !== undefined && own !== semitones;
        return { name, stress: stresses[i]!, strength: strength!, retuned };
      });
    },
  };
}
