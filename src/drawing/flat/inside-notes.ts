import type { Point } from "../../geometry/point.ts";
import { step } from "../../step/step.ts";
import { type Caution, inWords } from "../../workshop/cautions/caution.ts";
import type { HardPlace } from "../../workshop/guided/hard-places.ts";
import type { SheetFound } from "../../workshop/guided/sheet-for.ts";
import type { FixtureNotesInput } from "./fixture-notes.ts";

/** What the notes beside an inside template tell of; mm, rpm. */
export type InsideNotesInput = Pick<
  FixtureNotesInput,
  "part" | "up" | "machine" | "cutter" | "guide" | "first" | "offset" | "speed" | "cautions"
> & {
  readonly sheet: SheetFound;
  readonly plates: number;
  /** What x is counted from, and what the line is that is scribed along the plates. */
  readonly origin: string;
  readonly line: string;
  readonly packing: number | null;
  readonly openings: readonly {
    readonly id: string;
    readonly depth: number;
    readonly passes: readonly number[];
    readonly firstFits: boolean;
    readonly places: readonly HardPlace[];
    readonly middle: Point;
  }[];
};

/** The notes beside an inside template, each whole, the first one at the top: what to scribe on it, how it lies, how each recess is cut, and the cautions. */
export const insideNotes = step("inside.notes", 1, (given: InsideNotesInput): string[] => {
  const { machine, openings, offset, speed, cautions, first } = given;
  // In an opening the cutter goes round as its spindle turns.
  const turns = machine.rotation === "ccw" ? "COUNTER-CLOCKWISE" : "CLOCKWISE";
  const pushed =
    machine.moves === "work" ? "THE WORK IS PUSHED THE OTHER WAY" : "THE TOOL IS PUSHED THAT WAY";
  return [
    scribeText(given),
    sheetText(given),
    `TEST STRIP IN SCRAP FIRST: FROM GUIDED EDGE TO CUT EDGE MUST READ ${mm(Math.abs(offset))} WITHIN 0.05 (G: DEFAULT, CONFIRM)`,
    `MACHINE ${machine.id.toUpperCase()}, ${turns} SEEN FROM ABOVE THE WORK, ${speed.rpm} RPM (RIM ${mm(speed.rim)} M/S)`,
    `ARROWS: THE CUTTER'S WAY AS SEEN FROM THE WORK, ${turns} IN AN OPENING, AGAINST THE ROTATION; ${pushed}`,
    ...layTexts(given),
    "A CLOSED EDGE HAS NO RUN-IN AND NEEDS NONE: THE BIT GOES IN AT THE CIRCLES, IN WASTE, AND THE GUIDE COMES TO THE EDGE WHILE THE CUTTER TURNS FREE",
    ...(first === null
      ? []
      : [
          `FIRST ${first.id.toUpperCase()} TO ALL DEPTHS, THEN ${given.guide.id.toUpperCase()} TAKES ${mm((first.diameter - given.guide.diameter) / 2)} A SIDE IN THE SAME DEPTHS`,
        ]),
    ...openings.map((opening) => depthText(opening, given)),
    ...placeTexts(given),
    "THE VIRTUAL CUT TRIES THIS DRAWING, NOT THE WOOD",
    ...cautions.map((caution: Caution) => inWords(caution)),
  ];
});

function scribeText({ part, up, offset, cutter, guide, first, plates }: InsideNotesInput): string {
  const before = first === null ? "" : `, FIRST PASS ${named(first)}`;
  const many = plates === 1 ? "" : ` AND ITS NUMBER OF ${plates}`;
  return `SCRIBE ON IT: ORDER, FINGERPRINT, HAND, INSIDE TEMPLATE OF ${part.toUpperCase()}, ${up.toUpperCase()} UP, D ${signed(offset)}, CUTTER ${named(cutter)}, GUIDE ${named(guide)}${before}${many}`;
}

/** On which side of the work a template lies, by what rides on it. */
const lies = {
  collar: "ON THE FACE THAT THE COLLAR RUNS AT",
  bearing: "BETWEEN MACHINE AND WORK",
  bush: "BETWEEN ROUTER AND WORK",
  pin: "ON THE FACE AWAY FROM THE BIT",
} as const;

function sheetText({ sheet, guide, plates }: InsideNotesInput): string {
  const from =
    sheet.kind === "ok"
      ? `${sheet.sheet.toUpperCase()}, ${mm(sheet.thickness)} THICK, BLANK ${mm(sheet.length)} BY ${mm(sheet.width)}`
      : sheet.kind === "too-thin"
        ? `NO SHEET OF ${mm(sheet.least)} OR MORE IN STOCK`
        : `NO SHEET OF ${mm(sheet.length)} BY ${mm(sheet.width)} IN STOCK`;
  return `${plates === 1 ? "THE PLATE" : `${plates} PLATES, EACH`} FROM ${from}, ${lies[guide.kind]}`;
}

function layTexts({ origin, line, openings, plates, packing, machine }: InsideNotesInput): string[] {
  const at = openings.map(({ id, middle: { x, y } }) => {
    const off =
      Math.abs(y) < 0.005 ? "ON THE LINE" : `${Math.abs(y).toFixed(2)} ${y > 0 ? "ABOVE" : "BELOW"} IT`;
    return `${id.toUpperCase()} ${x.toFixed(2)}, ${off}`;
  });
  return [
    `LAY IT BY THE LINE SCRIBED ALONG IT, ${line}, AND THE TICKS AT EACH OPENING'S MIDDLE, FROM ${origin}: ${at.join("; ")}`,
    `${packing === null ? "PACKINGS AS HIGH AS THE WORK, THAT FIT ITS SIDES" : `PACKINGS ${packing.toFixed(2)} HIGH BESIDE THE BOARD, WHICH IS ARCHED, SO THAT THE PLATE LIES LEVEL ON ITS HIGHEST PLACE OVER THE INLAY`}, UNDER BOTH ENDS OF THE PLATE; THE WORK IS CLAMPED OR SCREWED DOWN WHERE IT COMES OUT FROM UNDER IT, OR IN WASTE`,
    `INDEX PINS FLUSH, THROUGH PLATE AND PACKINGS${plates > 1 ? ": ALL PLATES TAKE THE SAME PINS, ONE AFTER ANOTHER IN THEIR ORDER" : ""}${machine.moves === "tool" ? "; CLAMPS STAND OFF THE PLATE BESIDE THE WORK AND PRESS OVER THE PACKINGS" : ""}`,
  ];
}

function depthText(
  { id, depth, passes, firstFits }: InsideNotesInput["openings"][number],
  { sheet, first, guide }: InsideNotesInput,
): string {
  const over = sheet.kind === "ok" ? `, ${mm(sheet.thickness)} MORE FROM THE PLATE'S` : "";
  const own =
    first !== null && !firstFits
      ? `; ${first.id.toUpperCase()} HAS NO ROOM IN IT, ${guide.id.toUpperCase()} ALONE`
      : "";
  return `${id.toUpperCase()}: ${depth.toFixed(2)} DEEP, SET ${passes.map((set) => set.toFixed(2)).join(", ")} FROM THE WORK'S FACE${over} (DEFAULT, CONFIRM)${own}`;
}

function placeTexts({ openings }: InsideNotesInput): string[] {
  return openings.flatMap(({ id, places }) => {
    const rounded = places.filter(({ kind }) => kind === "outward");
    const deepest = Math.max(0, ...rounded.map(({ depth }) => depth ?? 0));
    const hollow = places.filter(({ kind }) => kind === "hollow");
    return [
      ...(rounded.length === 0
        ? []
        : [
            `${id.toUpperCase()}: ${rounded.length} CORNERS BESIDE THE FREED ONES COME OUT ROUNDED, ${mm(deepest)} DEEP, WHERE NOTHING BEARS`,
          ]),
      ...hollow.map(({ x, y, depth, length }) => {
        const deep = depth === null ? "NOT REACHED AT ALL" : `${mm(depth)} DEEP`;
        return `BY HAND: ${id.toUpperCase()}, HOLLOW THAT THE CUTTER CAN'T TOUCH, ${mm(length)} LONG, ${deep}, AT ${mm(x)}, ${mm(y)}`;
      }),
    ];
  });
}

function named({ id, diameter, measured }: FixtureNotesInput["cutter"]): string {
  return `${id.toUpperCase()} ${mm(diameter)} (MEASURED ${measured})`;
}

function signed(value: number): string {
  return `${value > 0 ? "+" : value < 0 ? "-" : ""}${mm(Math.abs(value))}`;
}

function mm(value: number): string {
  return String(Math.round(value * 100) / 100);
}
