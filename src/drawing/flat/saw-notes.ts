import type { FittedSaw } from "../../workshop/bandsaw/neck-cuts.ts";
import type { TableCut } from "../../workshop/bandsaw/sequence.ts";
import { type Caution, inWords } from "../../workshop/cautions/caution.ts";
import type { Way } from "../../workshop/stock/ways.ts";

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
    `BLANK ${mm(length)} LONG, ${mm(width)} WIDE, ${mm(thickness)} THICK, PLANED SQUARE, ${boardText(board)}`,
    `${sawText(saw)}; ${mm(allowance)} LEFT OUTSIDE THE FINISHED LINE (S)`,
    ...numbered,
    ...cautions.map(inWords),
  ];
}

function boardText(board: Way | null): string {
  if (board === null) return "FROM A BOARD THAT THE SHOP DOESN'T HAVE";
  const how = {
    flat: "LYING FLAT",
    turned: "TURNED A QUARTER, ITS WIDTH OUT OF THE BOARD'S THICKNESS",
    glued: `GLUED UP FROM ${board.plies} PLIES OF ${mm(board.ply)} PLANED, GLUE LINES UPRIGHT`,
    joined: `JOINED EDGE TO EDGE FROM ${board.plies} PIECES OF ${mm(board.ply)} PLANED`,
  };
  return `FROM BOARD ${board.board.toUpperCase()}, ${how[board.lies]}`;
}

function sawText(saw: FittedSaw | null): string {
  if (saw === null) return "NO SAW: THE LINES STAND WITHOUT A KERF";
  const { width, kerf, radius } = saw.blade;
  return `BANDSAW ${saw.id.toUpperCase()}, BLADE ${mm(width)}, KERF ${mm(kerf)}: LINES ARE ITS MIDDLE; LEAST RADIUS ${mm(radius)} (S)`;
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
  return `${tapedBack === "nothing" ? "FIRST" : "THEN"} CUT THE ${outline.toUpperCase()}: ${taped}${onTable.toUpperCase()} FLAT ON THE TABLE, ${up.toUpperCase()} UP; WORK ${mm(work)} HIGH, UPPER GUIDE AT ${mm(guide)} AT MOST (S)`;
}

function mm(value: number): string {
  return String(Math.round(value * 100) / 100);
}
