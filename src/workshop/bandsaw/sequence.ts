import { step } from "../../step/step.ts";
import { bandsawDistances } from "../cautions/bandsaw.ts";

/** What the order of the two cuts rests on: the blank's width and thickness, mm, and for which hand the neck is. */
export type SequenceInput = {
  readonly width: number;
  readonly thickness: number;
  readonly hand: "right" | "left";
};

/**
 * One of the two cuts: along which outline, which face of the blank lies flat on the table and which is up, how high the work
 * is under the guide and how high at most the guide stands, mm, and what is taped back on before it.
 */
export type TableCut = {
  readonly outline: "plan" | "side";
  readonly onTable: "back" | "treble side" | "bass side";
  readonly up: "front" | "bass side" | "treble side";
  readonly work: number;
  readonly guide: number;
  readonly tapedBack: "nothing" | "every offcut of the first cut";
};

/**
 * The order of the two-way cuts. The plan first, while back and front are flat; then its offcuts, which the relief cuts leave in several pieces, are taped back where they
 * were, so that the blank is square again and lies flat on its side for the other outline. The side view's far side lies down:
 * the treble side, or the bass side of a left-hand neck.
 */
export const sawSequence = step(
  "neck.saw-sequence",
  1,
  ({ width, thickness, hand }: SequenceInput): readonly [TableCut, TableCut] => {
    const { guide } = bandsawDistances;
    const [up, down] =
      hand === "right" ? (["bass side", "treble side"] as const) : (["treble side", "bass side"] as const);
    return [
      {
        ...{ outline: "plan", onTable: "back", up: "front", work: thickness, guide: thickness + guide },
        tapedBack: "nothing",
      },
      {
        ...{ outline: "side", onTable: down, up, work: width, guide: width + guide },
        tapedBack: "every offcut of the first cut",
      },
    ];
  },
);
