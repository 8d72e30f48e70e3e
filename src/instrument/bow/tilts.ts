import { step } from "../../step/step.ts";

/** The strings' centres where they meet the bridge, mm, highest string first; at least four. */
export type BowTiltsInput = { readonly centres: readonly { readonly y: number; readonly z: number }[] };

/**
 * How a bow finds each inner string, in degrees. A tilt is the hair's to the y axis, seen along the strings, positive where its
 * treble end is down. `tilt.treble` is where the hair meets the string's neighbour on the treble side too, `tilt.bass` that on
 * the bass side, and `angle` the range between them, in which it touches the string alone.
 */
export type StringTilts = {
  readonly angle: number;
  readonly tilt: { readonly bass: number; readonly treble: number };
};

/**
 * `strings` are the inner ones, from the treble to the bass side. `outermost` is how far a bow is tilted down on either side to
 * play the outer string there, positive toward its own side: the line through its last two strings, and as far again as the whole
 * range of the inner string beside it (G: default, confirm).
 */
export type BowTilts = {
  readonly strings: readonly StringTilts[];
  readonly outermost: { readonly bass: number; readonly treble: number };
};

/** The ranges of bow tilts from the strings' real heights. A string below the line through its neighbours has a range under 0. */
export const bowTilts = step("bow.tilts", 1, ({ centres }: BowTiltsInput): BowTilts => {
  const chords = centres.slice(1).map(({ y, z }, i) => {
    const neighbour = centres[i]!;
    return (Math.atan2(z - neighbour.z, neighbour.y - y) * 180) / Math.PI;
  });
  const strings = chords.slice(1).map((bass, i) => {
    const treble = chords[i]!;
    return { angle: treble - bass, tilt: { bass, treble } };
  });
  return {
    strings,
    outermost: {
      treble: chords[0]! + strings[0]!.angle,
      bass: -chords.at(-1)! + strings.at(-1)!.angle,
    },
  };
});
