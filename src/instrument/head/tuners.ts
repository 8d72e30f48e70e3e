import { step } from "../../step/step.ts";
import { onHead } from "./frame.ts";

/** Lengths in mm, the head's angle in degrees; strings from the highest to the lowest where they leave the nut. */
export type TunersInput = {
  /** How the strings are tuned; at the tail, the head only holds their ends. */
  readonly kind: "machine-heads" | "pegs" | "tail";
  readonly count: number;
  readonly angle: number;
  readonly margin: number;
  readonly row: number;
  readonly column: number;
  readonly edge: number;
  readonly post: number;
  /** How high over the head's face a string leaves its post, or rises out of its hole. */
  readonly height: number;
  readonly nutThickness: number;
  readonly rise: readonly number[];
  readonly nut: readonly { readonly y: number; readonly z: number }[];
};

/** A place in plan: along from the nut's fingerboard edge and across to the treble side, mm. */
type PlanPlace = { readonly x: number; readonly y: number };

/** One tuner or string's end: its hole's middle in the head's face (along from the nut's head edge, y across) and its string's path. */
export type Tuner = {
  readonly row: number;
  readonly along: number;
  readonly y: number;
  /** In plan: where the string leaves the nut, where it leaves its post or hole, and where that stands at the string's height. */
  readonly nut: PlanPlace;
  readonly end: PlanPlace;
  readonly post: PlanPlace;
  /** How far the string turns over the nut, degrees: seen from the side (positive downward), and in plan. */
  readonly bend: number;
  readonly splay: number;
};

/** The tuners, highest string first, the rows that they stand in, how long the head is along its face and half its width, mm. */
export type Tuners = {
  readonly kind: TunersInput["kind"];
  readonly rows: number;
  readonly length: number;
  readonly half: number;
  readonly tuners: readonly Tuner[];
};

/** Where a tuner stands on the face, and where across it its string leaves it. */
type Stand = { readonly row: number; readonly y: number; readonly leaves: number };

/**
 * Tuners of one of three kinds.
 *
 * Machine heads and pegs stand in two columns. The higher half of the strings (the larger where the count is odd) goes to the
 * treble column; in each column the outermost string goes to the row nearest the nut, so that no two paths cross. A string
 * leaves its post on the side toward the centreline. With tuners at the tail the head is bare: each string runs straight on
 * to a hole behind its slot, in the first and the second row by turns; it rises out of the hole's middle.
 */
export const headTuners = step("head.tuners", 2, (given: TunersInput): Tuners => {
  const { kind, margin, row, column, edge } = given;
  const stands = given.nut.map((_, i) => (kind === "tail" ? behindSlot(given, i) : inColumn(given, i)));
  const rows = 1 + Math.max(...stands.map((stand) => stand.row));
  const outermost = kind === "tail" ? Math.max(...stands.map(({ y }) => Math.abs(y))) : column;
  const tuners = stands.map((stand, i) => tunerAt(given, i, stand));
  return { kind, rows, length: 2 * margin + (rows - 1) * row, half: outermost + edge, tuners };
});

function inColumn({ count, column, post }: TunersInput, i: number): Stand {
  const treble = i < Math.ceil(count / 2);
  const y = treble ? column : -column;
  return { row: treble ? i : count - 1 - i, y, leaves: y - Math.sign(y) * (post / 2) };
}

function behindSlot({ nut }: TunersInput, i: number): Stand {
  const { y } = nut[i]!;
  return { row: i % 2, y, leaves: y };
}

/** A tuner with its string's turn over the nut, from the line on the board's side to the line to where the string leaves it. */
function tunerAt(
  { angle, height, margin, row: apart, nutThickness, rise, nut }: TunersInput,
  i: number,
  { row, y, leaves }: Stand,
): Tuner {
  const along = margin + row * apart;
  const { x, z } = onHead({ nutThickness, angle }, along, height);
  const fall = (Math.atan2(nut[i]!.z - z, -x) * 180) / Math.PI;
  return {
    ...{ row, along, y, nut: { x: 0, y: nut[i]!.y }, end: { x, y: leaves }, post: { x, y } },
    ...{ bend: fall - rise[i]!, splay: (Math.atan2(leaves - nut[i]!.y, -x) * 180) / Math.PI },
  };
}
