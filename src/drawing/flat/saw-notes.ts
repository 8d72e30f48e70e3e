import type { FittedSaw } from "../../workshop/bandsaw/fitted-saws.ts";
import type { TableCut } from "../../workshop/bandsaw/sequence.ts";
import { type Caution, inWords } from "../../workshop/cautions/caution.ts";
import type { Way } from "../../workshop/stock/ways.ts";
import { boardText, mmText, sawText } from "./saw-words.ts";

/** What the notes beside saw lines tell of: board, blank, saw, allowance and the cuts in their order; mm. */
export type SawNotesInput = {
  readonly board: Way | null;
  readonly blank: { readonly length: number; readonly width: number; readonly thickness: number };
  readonly saw: FittedSaw | null;
  readonly allowance: number;
  readonly cuts: readonly [TableCut, TableCut];
  readonly cautions: readonly Caution[];
};

/** The notes beside a neck's saw lines, top line first: what the blank is, on what it is sawn, in which order, and the cautions. */
export function sawNotes({ board, blank, saw, allowance, cuts, cautions }: SawNotesInput): string[] {
  const { length, width, thickness } = blank;
  const numbered = steps(cuts).map((text, i) => `${i + 1}. ${text}`);
  return [
    `BLANK ${mmText(length)} LONG, ${mmText(width)} WIDE, ${mmText(thickness)} THICK, PLANED SQUARE, ${boardText(board)}`,
    `${sawText(saw)}; ${mmText(allowance)} LEFT OUTSIDE THE FINISHED LINE (S)`,
    ...numbered,
    ...cautions.map(inWords),
  ];
}

function steps(cuts: readonly [TableCut, TableCut]): string[] {
  return [
    "BORE THE INDEX PINS' HOLES BEFORE SAWING; BOTH ENDS OF THE BLANK STAY ON, THE LINES RUN PAST THEM",
    ...cuts.map(cutText),
    "IN EACH CUT THE RELIEF CUTS COME FIRST: STOP ON THE LINE. TABLE SQUARE TO THE BLADE",
    "WHERE A LINE RUNS OUT THROUGH A FACE NOTHING IS SAWN OFF: THE PLANED FACE IS KEPT",
  ];
}

function cutText({ outline, onTable, up, work, guide, tapedBack }: TableCut): string {
  const taped = tapedBack === "nothing" ? "" : `TAPE ${tapedBack.toUpperCase()} BACK WHERE IT WAS; `;
  return `${tapedBack === "nothing" ? "FIRST" : "THEN"} CUT THE ${outline.toUpperCase()}: ${taped}${onTable.toUpperCase()} FLAT ON THE TABLE, ${up.toUpperCase()} UP; WORK ${mmText(work)} HIGH, UPPER GUIDE AT ${mmText(guide)} AT MOST (S)`;
}
