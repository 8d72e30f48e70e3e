import type { Title } from "../flat/titled.ts";
import { lettering, textLength } from "../sheet/lettering.ts";
import type { Marks, SheetText } from "../sheet/sheet.ts";
import { overruledLines } from "../sheet/titled-sheet.ts";
import { wrapped } from "../sheet/wrapped.ts";
import { type Tile, type TilePlan, tileName } from "./tile-plan.ts";

/** What stands at the foot of each sheet beside its own name: the drawing, its title, the paper, and what is not to be taken from paper. */
export type TileTitle = Title & {
  readonly name: string;
  readonly paper: string;
  readonly scale: readonly [x: number, y: number] | null;
  /** Such as "FRET SLOTS (BROKEN LINES)"; null where everything may be pricked through. */
  readonly fromNumbers: string | null;
  /** What is said of the whole drawing, in sentences that would be cut by its joins. */
  readonly remarks: readonly string[];
  /** A paper of the shop that takes far fewer sheets, and how many; null where there is none, or no need of one. */
  readonly fewer: { readonly paper: string; readonly sheets: number } | null;
};

/** From one line of the foot to the next, mm. */
const lineStep = 4.05;

/** The room of the map at the foot's right, and of the sheet's own name at its left, mm. */
export const footSides = { map: 48, name: 24 } as const;

/** The least height of the foot, for the map, mm. */
const leastFoot = 34;

/** How high capitals of the sheet's own name stand, mm. */
const nameHeight = 7;

/** How many lines are kept for what was overruled, and for remarks. */
const room = { overruled: 5, remarks: 6 } as const;

/** How high the foot must be on paper that is so wide inside its margins, mm. */
export function footHeight(title: TileTitle, width: number): number {
  return Math.max(leastFoot, linesOf(title, "A1: ROW A OF A, COLUMN 10 OF 10", width).length * lineStep + 3);
}

/** The words at the foot of one sheet, on the page. */
export function tileWords(title: TileTitle, plan: TilePlan, tile: Tile): Marks {
  const { inside, window, rows, columns } = plan;
  const name = tileName(tile);
  const lastRow = tileName({ row: rows - 1, column: 0 }).replace(/\d+$/, "");
  const alone = rows * columns === 1;
  const place = alone
    ? `${name}, THE ONLY ONE`
    : `${name}: ROW ${name.replace(/\d+$/, "")} OF ${lastRow}, COLUMN ${tile.column + 1} OF ${columns}`;
  const top = window.minY - 9 - 1;
  const lines = linesOf(title, place, inside.maxX - inside.minX, alone);
  const texts = lines.map((text, i): SheetText => {
    const y = top - lineStep * (i + 0.8);
    return { text, x: inside.minX + footSides.name, y, height: lettering.height, turn: 0, align: "left" };
  });
  const own: SheetText = {
    ...{ text: name, x: inside.minX + 1, y: top - nameHeight - 1 },
    ...{ height: Math.min(nameHeight, (nameHeight * 3) / Math.max(3, name.length)), turn: 0, align: "left" },
  };
  return { lines: [], texts: [own, ...texts] };
}

function linesOf(title: TileTitle, place: string, width: number, alone = false): string[] {
  const letters = lettersIn(width);
  const { order, name, part, fingerprint, hand, seenFrom, paper, scale, fromNumbers, fewer } = title;
  const taken = scale === null ? "" : `   CORRECTED FOR A PRINTER AT ${scale[0]}, ${scale[1]}`;
  const own = [
    `ORDER ${order}   ${name.toUpperCase()}   PART ${part.toUpperCase()}   SHEET ${place}`,
    `FINGERPRINT ${fingerprint}   ${hand.toUpperCase()} HAND   SEEN FROM THE ${seenFrom.toUpperCase()}`,
    `FULL SIZE 1:1 IN MM ON ${paper.toUpperCase()}: PRINT AT ACTUAL SIZE, 100 %, NEVER FIT TO PAGE${taken}`,
    "MEASURE THE SQUARE AND BOTH LONG BARS WITH A STEEL RULE, EACH WAY BY ITSELF. WHAT 100 MM MEASURES, OVER 100, IS THE SCALE OF THIS PAPER IN THE SHOP'S FILE",
    ...(alone ? [] : ["JOIN: CUT WHERE IT SAYS CUT, LAY IT TO THE LINE OF THE SHEET BEFORE, CROSS ON CROSS"]),
    ...(fewer === null ? [] : [fewerWords(fewer)]),
    ...(fromNumbers === null ? [] : [`${fromNumbers}: FROM NUMBERS, NOT FROM PAPER`]),
    "PAPER MOVES BY UP TO 0.4 IN 100 WITH THE WEATHER",
    "LOCAL CODES, THE MACHINE'S MANUAL AND A COMPETENT PERSON COME FIRST",
  ];
  return [
    ...own.flatMap((line) => wrapped(line, letters)),
    ...(remarksFit(title, width) ? remarkLines(title, letters) : wrapped(seeRemarks, letters)),
    ...overruledLines(title.overruled, letters, room.overruled),
  ];
}

function fewerWords({ paper, sheets }: NonNullable<TileTitle["fewer"]>): string {
  const count = sheets === 1 ? "ONE SHEET" : `${sheets} SHEETS`;
  return `FEWER JOINS: ${count} ON ${paper.toUpperCase()}, WHERE THE ORDER SAYS PAPER: ${paper.toUpperCase()}`;
}

const seeRemarks = "REMARKS AND CAUTIONS STAND IN FULL ON THE LAST SHEET: READ THEM FIRST";

/** Whether a drawing's remarks stand at the foot of its sheets, when they are so wide inside the margins, mm; else they take pages of their own. */
export function remarksFit(title: TileTitle, width: number): boolean {
  return remarkLines(title, lettersIn(width)).length <= room.remarks;
}

function remarkLines({ remarks }: TileTitle, letters: number): string[] {
  return remarks.flatMap((remark) => wrapped(remark, letters));
}

/** How many letters a line of the foot holds, between the sheet's name and the map. */
function lettersIn(width: number): number {
  const long = width - footSides.name - footSides.map - 2;
  return Math.floor(long / textLength({ text: "0", height: lettering.height }));
}
