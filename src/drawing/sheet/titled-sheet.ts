import { rectangleOf } from "../../geometry/rectangle.ts";
import type { Title } from "../flat/titled.ts";
import { lettering, textLength } from "./lettering.ts";
import { type Sheet, type SheetLine, type SheetText, together } from "./sheet.ts";
import { lineStep, titleLines } from "./sheet-frame.ts";
import { stroke } from "./strokes.ts";
import { wrapped } from "./wrapped.ts";

const partNotes = [
  "X FROM THE NUT'S FINGERBOARD EDGE, HEIGHTS FROM THE BOARD'S GLUING SURFACE",
  "TUNER HOLES ARE BORED SQUARE TO THE HEAD'S FACE",
] as const;

const bar = 50;
const pad = 2;

/**
 * A sheet with its frame and its title block, which has a 50 mm bar to measure after printing. Reasons of what was overruled are
 * written as far as there is room; what is left is counted.
 */
export function titledSheet(sheet: Sheet, title: Title): Sheet {
  const { frame, titleBox, paper } = sheet;
  const own = [
    `ORDER ${title.order}   PART ${title.part.toUpperCase()}   FINGERPRINT ${title.fingerprint}`,
    `SCALE ${sheet.scale} AND AS NOTED   UNIT MM   ${title.hand.toUpperCase()} HAND   SEEN FROM THE ${title.seenFrom.toUpperCase()}`,
    `THIRD-ANGLE PROJECTION   ${sheet.notes ? "" : "SECTIONS SEEN FROM THE TAIL   "}PAPER ${paper.id}`,
    ...(sheet.notes ?? partNotes),
    "LOCAL CODES, THE MACHINE'S MANUAL AND A COMPETENT PERSON COME FIRST",
  ];
  const wide = titleBox.maxX - titleBox.minX - 2 * pad;
  const letters = Math.floor(wide / textLength({ text: "0", height: lettering.height }));
  const lines = [...own, ...overruledLines(title.overruled, letters, titleLines - own.length - 1)];
  const texts = lines.map((text, i): SheetText => {
    return { ...at(sheet, i), text, height: lettering.height, turn: 0, align: "left" };
  });
  const drawn: SheetLine[] = [
    { weight: "frame", path: rectangleOf(frame) },
    { weight: "frame", path: rectangleOf(titleBox) },
  ];
  return { ...sheet, ...together([sheet, { lines: drawn, texts }, barToMeasure(sheet)]) };
}

/** Where the base line of one of the title's lines starts, counted from above. */
function at({ titleBox }: Sheet, line: number) {
  return { x: titleBox.minX + pad, y: titleBox.maxY - 1 - lineStep * (line + 0.75) };
}

/** The lines that say what was overruled, at most so many of so many letters; that more is left out is said in the last. */
export function overruledLines(overruled: readonly string[], letters: number, room: number): string[] {
  const all = overruled.flatMap((reason) => wrapped(`OVERRULED ${reason.toUpperCase()}`, letters));
  if (all.length <= room) return all;
  return [...all.slice(0, room - 1), "MORE IS OVERRULED: SEE CHECKS.JSON OF THE PACK"];
}

function barToMeasure(sheet: Sheet) {
  const { x, y } = at(sheet, titleLines - 1);
  const text = `PRINT AT ACTUAL SIZE: THIS BAR IS ${bar} MM`;
  const line = { text, x, y, height: lettering.height, turn: 0, align: "left" } as const;
  const start = x + textLength(line) + 4;
  const middle = y + lettering.height / 2;
  const end = { x: start + bar, y: middle };
  return {
    lines: [
      stroke("edge", { x: start, y: middle }, end),
      ...[0, bar / 2, bar].map((dx) =>
        stroke("edge", { x: start + dx, y: middle - 1.2 }, { x: start + dx, y: middle + 1.2 }),
      ),
    ],
    texts: [line],
  };
}
