import type { FittedSaw } from "../../workshop/bandsaw/fitted-saws.ts";
import type { PartTableCut } from "../../workshop/bandsaw/part-sequence.ts";
import { type Caution, inWords } from "../../workshop/cautions/caution.ts";
import type { Way } from "../../workshop/stock/ways.ts";
import { boardText, mmText, sawText } from "./saw-words.ts";

/** What the notes beside a part's saw lines tell of; mm and degrees. `mitre` is a wing's joint line's turn from its grain, positive opening to the tail. */
export type PartSawNotesInput = {
  readonly board: Way | null;
  readonly blank: { readonly length: number; readonly width: number; readonly thickness: number };
  readonly planed: number;
  readonly saw: FittedSaw | null;
  readonly allowance: number;
  readonly mitre: number;
  readonly pins: readonly number[];
  /** What is done to the blank before any cut. */
  readonly before: readonly string[];
  readonly cuts: readonly PartTableCut[];
  readonly cautions: readonly Caution[];
};

/** The notes beside a part's saw lines, top line first: what the blank is, on what it is sawn, each cut's set-up, and the cautions. */
export function partSawNotes(given: PartSawNotesInput): string[] {
  const { board, blank, planed, saw, allowance, pins, before, cuts, cautions } = given;
  const { length, width, thickness } = blank;
  const plane = thickness === planed ? "FACE DOWN PLANED" : `BOTH FACES PLANED, TO ${mmText(planed)}`;
  const steps = [
    ...before,
    pins.length === 0
      ? "NO WASTE IS WIDE ENOUGH FOR INDEX PINS: SCRIBE THE LINES ON THE BLANK ITSELF"
      : `INDEX PINS ${pins.map(mmText).join(" AND ")} BORED RIGHT THROUGH THE WASTE FIRST, SQUARE: THEY CARRY THE LINES TO THE OTHER FACE`,
    ...cuts.flatMap((cut, i) => cutText(cut, cuts[i - 1], given)),
    "IN EACH CUT THE RELIEF CUTS COME FIRST: STOP ON THE LINE",
  ];
  return [
    `BLANK ${mmText(length)} LONG, ${mmText(width)} WIDE, ${mmText(thickness)} THICK, ${plane}, ${boardText(board)}`,
    `${sawText(saw)}; ${mmText(allowance)} LEFT OUTSIDE THE FINISHED LINE (S)`,
    ...steps.map((text, i) => `${i + 1}. ${text}`),
    ...cautions.map(inWords),
  ];
}

function cutText(
  cut: PartTableCut,
  before: PartTableCut | undefined,
  { mitre, allowance }: PartSawNotesInput,
): string[] {
  const { onTable, up, work, guide, tilt } = cut;
  const what = { joint: "JOINT", rim: "RIM", outline: "OUTLINE, ALL ROUND", side: "SIDES", end: "ENDS" }[
    cut.cut
  ];
  const again = before !== undefined && before.tilt !== 0 ? "SQUARE AGAIN" : "SQUARE TO THE BLADE";
  const falls = tilt < 0 ? "TOWARD THE COLUMN" : "AWAY FROM THE COLUMN";
  const table =
    tilt === 0
      ? `TABLE ${again}`
      : `TABLE TILTED ${Math.abs(tilt).toFixed(2)} DEG, FALLING ${falls} (COLUMN ON THE LEFT)`;
  const first = `CUT THE ${what}: ${table}, ${onTable.toUpperCase()} ON THE TABLE, ${up.toUpperCase()} UP; WORK ${mmText(work)} HIGH, UPPER GUIDE AT ${mmText(guide)} AT MOST (S)`;
  if (cut.cut !== "joint") return [first];
  return [first, ...jointText(cut, mitre, allowance)];
}

function jointText({ up, fence, leads, tilt }: PartTableCut, mitre: number, allowance: number): string[] {
  const pack = 100 * Math.tan((Math.abs(mitre) * Math.PI) / 180);
  const packed =
    pack < 0.01
      ? ""
      : `, PACKED OFF IT AT THE ${mitre > 0 ? "HEAD" : "TAIL"} BY ${pack.toFixed(2)} IN 100 (MITRE ${mitre.toFixed(2)})`;
  const lies =
    tilt === 0 || fence === "none"
      ? []
      : [
          `WING ON THE LOW SIDE, THE BLANK'S FAR EDGE ALONG A FENCE THERE${packed}, ${leads.toUpperCase()} END FIRST: THE ${up.toUpperCase()} ARRIS COMES OUT SHARP`,
        ];
  const carried =
    up === "back" ? ["THE JOINT'S LINE STANDS AS IT IS ON THE BACK: CARRY IT THERE BY THE PINS"] : [];
  return [
    ...lies,
    ...carried,
    `${mmText(allowance)} STAYS ON THE JOINT, SQUARE TO ITS FACE: IT IS TRUED BEFORE ITS PINS ARE BORED`,
  ];
}
