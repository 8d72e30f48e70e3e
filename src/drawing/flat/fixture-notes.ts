import { type Caution, inWords } from "../../workshop/cautions/caution.ts";
import type { GrainLengths } from "../../workshop/guided/grain.ts";
import type { HardPlace } from "../../workshop/guided/hard-places.ts";
import type { Pass } from "../../workshop/guided/passes.ts";
import type { SheetFound } from "../../workshop/guided/sheet-for.ts";

/** A tool as a label names it: measured diameter, mm, and the day of measuring. */
export type Measured = { readonly id: string; readonly diameter: number; readonly measured: string };

/** What the notes beside a fixture tell of, mm, m/s and rpm. */
export type FixtureNotesInput = {
  readonly part: string;
  readonly up: string;
  readonly machine: { readonly id: string; readonly rotation: "ccw" | "cw"; readonly moves: "work" | "tool" };
  readonly cutter: Measured;
  readonly guide: Measured & { readonly kind: "collar" | "bearing" | "bush" | "pin" };
  readonly first: Measured | null;
  readonly offset: number;
  readonly passes: readonly Pass[];
  readonly speed: { readonly rpm: number; readonly rim: number };
  readonly thickness: number;
  readonly grain: GrainLengths;
  readonly places: readonly HardPlace[];
  readonly sheet: SheetFound;
  readonly cautions: readonly Caution[];
  /** How the work is held and used on the fixture, in lines, where no batten carries it. */
  readonly said?: readonly string[];
};

/** The notes beside a fixture, top line first: what to scribe on it, how it is made and used, and the cautions. */
export function fixtureNotes(given: FixtureNotesInput): string[] {
  const { part, up, machine, cutter, guide, first, offset, speed, cautions } = given;
  const before = first === null ? "" : `, FIRST PASS ${named(first)}`;
  const turns = machine.rotation === "ccw" ? "COUNTER-CLOCKWISE" : "CLOCKWISE";
  const pushed =
    machine.moves === "work" ? "THE WORK IS PUSHED THE OTHER WAY" : "THE TOOL IS PUSHED THAT WAY";
  return [
    `SCRIBE ON IT: FIXTURE OF ${part.toUpperCase()}, ${up.toUpperCase()} UP, D ${signed(offset)}, CUTTER ${named(cutter)}, GUIDE ${named(guide)}${before}`,
    sheetText(given),
    ...(given.said ?? []),
    `TEST STRIP IN SCRAP FIRST: FROM GUIDED EDGE TO CUT EDGE MUST READ ${mm(Math.abs(offset))} WITHIN 0.05 (G: DEFAULT, CONFIRM)`,
    `MACHINE ${machine.id.toUpperCase()}, ${turns} SEEN FROM ABOVE THE WORK, ${speed.rpm} RPM (RIM ${mm(speed.rim)} M/S)`,
    `ARROWS: THE CUTTER'S WAY AS SEEN FROM THE WORK, AGAINST THE ROTATION; ${pushed}`,
    passText(given),
    grainText(given),
    ...given.places.map(placeText),
    "THE VIRTUAL CUT TRIES THIS DRAWING, NOT THE WOOD",
    ...cautions.map(inWords),
  ];
}

/** On which side of the work a template lies, by what rides on it. */
const lies = {
  collar: "ON THE FACE THAT THE COLLAR RUNS AT",
  bearing: "ON THE FACE THAT THE BIT'S BEARING RUNS AT",
  bush: "BETWEEN ROUTER AND WORK",
  pin: "ON THE FACE AWAY FROM THE BIT",
} as const;

function sheetText({ sheet, thickness, guide, said }: FixtureNotesInput): string {
  const from =
    sheet.kind === "ok"
      ? `${sheet.sheet.toUpperCase()}, ${layersText(sheet)}${mm(sheet.thickness)} THICK, BLANK ${mm(sheet.length)} BY ${mm(sheet.width)}`
      : sheet.kind === "too-thin"
        ? `NO SHEET OF ${mm(sheet.least)} OR MORE IN STOCK`
        : `NO SHEET OF ${mm(sheet.length)} BY ${mm(sheet.width)} IN STOCK`;
  return `TEMPLATE AND BASE IN ONE FROM ${from}, ${lies[guide.kind]}; WORK ${mm(thickness)} THICK${said === undefined ? ", JOINT AGAINST THE BATTEN" : ""}`;
}

function layersText({ layers = 1 }: { readonly layers?: number }): string {
  return layers > 1 ? `${layers} LAYERS GLUED, ` : "";
}

function passText({ passes }: FixtureNotesInput): string {
  const each = passes.map(({ guide, takes }, i) => `${i + 1}. ${guide.toUpperCase()} TAKES ${mm(takes)}`);
  return `PASSES: ${each.join(", ")} (SAW'S ALLOWANCE AND 0.5 OF WANDER)`;
}

function grainText({ grain }: FixtureNotesInput): string {
  const lengths = (["with", "along", "against", "end grain"] as const)
    .map((one) => `${one.toUpperCase()} ${Math.round(grain[one])}`)
    .join(", ");
  return `GRAIN: ${lengths}; TURNED OVER ON A MIRRORED FIXTURE AGAINST WOULD BE ${Math.round(grain.with)}. LIGHT CUTS WHERE AGAINST`;
}

function placeText({ kind, x, y, depth, length }: HardPlace): string {
  const what = kind === "hollow" ? "HOLLOW THAT THE CUTTER CAN'T TOUCH" : "CORNER THAT COMES OUT ROUNDED";
  const deep = depth === null ? "NOT REACHED AT ALL" : `${mm(depth)} DEEP`;
  return `BY HAND: ${what}, ${mm(length)} LONG, ${deep}, AT ${mm(x)}, ${mm(y)}`;
}

function named({ id, diameter, measured }: Measured): string {
  return `${id.toUpperCase()} ${mm(diameter)} (MEASURED ${measured})`;
}

function signed(value: number): string {
  return `${value > 0 ? "+" : ""}${value.toFixed(2)}`;
}

function mm(value: number): string {
  return String(Math.round(value * 100) / 100);
}
