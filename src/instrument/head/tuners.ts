import { step } from "../../step/step.ts";

/** Lengths in mm, the head's angle in degrees; strings from the highest to the lowest where they leave the nut. */
export type TunersInput = {
  readonly count: number;
  readonly angle: number;
  readonly margin: number;
  readonly row: number;
  readonly column: number;
  readonly post: number;
  /** How high over the head's face a string leaves its post. */
  readonly height: number;
  readonly nutThickness: number;
  readonly rise: readonly number[];
  readonly nut: readonly { readonly y: number; readonly z: number }[];
};

/** One tuner: its hole's middle in the head's face (along from the nut's head edge, y across) and its string's path. */
export type Tuner = {
  readonly along: number;
  readonly y: number;
  /** How far the string turns over the nut, degrees: seen from the side (positive downward), and in plan. */
  readonly bend: number;
  readonly splay: number;
};

/** The tuners, highest string first, the rows that they stand in and how long the head is along its face, mm. */
export type Tuners = { readonly rows: number; readonly length: number; readonly tuners: readonly Tuner[] };

/**
 * Tuners in two columns. The higher half of the strings (the larger where the count is odd) goes to the treble column; in each
 * column the outermost string goes to the row nearest the nut, so that no two paths cross. A string leaves its post on the
 * side toward the centreline.
 */
export const headTuners = step("head.tuners", 1, (given: TunersInput): Tuners => {
  const { count, margin, row, column, post } = given;
  const treble = Math.ceil(count / 2);
  const tuners = given.nut.map((_, i): Tuner => {
    const onTreble = i < treble;
    const rank = onTreble ? i : count - 1 - i;
    const y = onTreble ? column : -column;
    const along = margin + rank * row;
    return { along, y, ...turnOverNut(given, i, along, y - Math.sign(y) * (post / 2)) };
  });
  return { rows: treble, length: 2 * margin + (treble - 1) * row, tuners };
});

/** The string's turn over the nut, from its line on the board's side to its line to the post at (along, y) on the face. */
function turnOverNut(
  { angle, height, nutThickness, rise, nut }: TunersInput,
  i: number,
  along: number,
  y: number,
) {
  const tilt = (angle * Math.PI) / 180;
  const x = -nutThickness - along * Math.cos(tilt) - height * Math.sin(tilt);
  const z = -along * Math.sin(tilt) + height * Math.cos(tilt);
  const fall = (Math.atan2(nut[i]!.z - z, -x) * 180) / Math.PI;
  return { bend: fall - rise[i]!, splay: (Math.atan2(y - nut[i]!.y, -x) * 180) / Math.PI };
}
