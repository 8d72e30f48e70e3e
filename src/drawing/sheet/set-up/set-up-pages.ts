import { extentsOf } from "../../../geometry/measure.ts";
import type { Path } from "../../../geometry/path.ts";
import type { Annotated } from "../annotate.ts";
import { heading, paragraph } from "../bench/block.ts";
import { type Columns, flowed } from "../bench/flowed.ts";
import { boxOf } from "../lettering.ts";
import { moved } from "../moved.ts";
import type { PaperSize } from "../neck/input.ts";
import { scales } from "../scales.ts";
import { type Box, type Marks, type Sheet, together } from "../sheet.ts";
import { emptySheet } from "../sheet-frame.ts";
import { type SetUpWords, setUpSections } from "./set-up-words.ts";

/** A set-up's sheet before it is laid out: its name, the picture at a scale, what that shows, and all that is written. */
export type SetUpDrawn = {
  readonly name: string;
  readonly papers: readonly PaperSize[];
  /** How wide and high the picture is without its names, mm of the work. */
  readonly bare: { readonly wide: number; readonly high: number };
  readonly picture: (scale: number) => Annotated;
  readonly pictureWords: string;
  readonly words: SetUpWords;
};

/** What is kept free inside the frame, and between picture and columns; the least width of a column beside the picture, and height of one under it; how high a picture is at most that has columns under it alone, mm. */
const room = { inside: 3, inset: 1.5, between: 5, wide: 120, high: 45, low: 160 } as const;

/** How many pages a set-up's sheet has at most before a larger paper is taken. */
const mostPages = 2;

/** A picture at this scale or a larger one is large enough to be worth one page instead of two. */
const fairScale = 0.4;

type Scale = (typeof scales)[number];

/**
 * The pages of a set-up's sheet without their titles: the picture at the upper left of the first, the words in a column over the title's place, then
 * under the picture. On the first paper that holds it on two pages at most; at the largest scale, or the largest with one page if that is fair.
 */
export function setUpPages(drawn: SetUpDrawn): Sheet[] {
  for (const paper of drawn.papers) {
    let best: Sheet[] | undefined;
    for (const scale of scales) {
      if (best !== undefined && scale.factor < fairScale) break;
      const pages = pagesOn(paper, scale, drawn);
      if (pages === undefined || pages.length > mostPages) continue;
      if (best === undefined || pages.length < best.length) best = pages;
      if (best.length === 1) break;
    }
    if (best !== undefined) return best;
  }
  throw new RangeError(`the sheet of ${drawn.name} has room on no paper`);
}

function pagesOn(
  paper: PaperSize,
  scale: Scale,
  { name, bare, picture, pictureWords, words }: SetUpDrawn,
): Sheet[] | undefined {
  const { frame, titleBox } = emptySheet(paper, "");
  if (!mayFit(bare.wide * scale.factor, bare.high * scale.factor, frame)) return undefined;
  const view = inPlace(picture(scale.factor), frame);
  const columns = view && columnsRound(boxOf(view), frame, titleBox);
  if (view === undefined || columns === undefined) return undefined;
  const titles = {
    head: heading(`SET-UP SHEET: ${name}`),
    rows: [paragraph(`${pictureWords}, ${scale.text}`)],
  };
  const written = flowedOr(() => flowed([titles, ...setUpSections(words)], columns));
  return written?.map((marks, page) => ({
    ...{ ...emptySheet(paper, scale.text), ...together(page === 0 ? [marks, view] : [marks]) },
    notes: [
      `SET-UP SHEET ${name}   PAGE ${page + 1} OF ${written.length}`,
      "FROM ABOVE AS IT LIES BEFORE WHOEVER CUTS: TAKE NO MEASURE FROM IT",
    ],
  }));
}

/** Whether a picture of a size may leave room for columns, before its names are placed, which takes long. */
function mayFit(wide: number, high: number, { minX, maxX, minY, maxY }: Box): boolean {
  const beside = high < room.low ? 0 : room.wide;
  return wide <= maxX - minX - beside && high <= maxY - minY;
}

/** The picture in the upper left corner of a frame; nothing where a name in it has no place. */
function inPlace(picture: Annotated, { minX, maxY }: Box): Marks | undefined {
  if (picture.kind !== "ok") return undefined;
  const box = boxOf(picture.marks);
  return moved(picture.marks, minX + room.inset - box.minX, maxY - room.inset - box.maxY);
}

/**
 * The columns that are left beside a picture: under one that is low and long, two; else one beside it and one under it. On later pages two, over and
 * beside the title's place. Nothing where the picture leaves too little.
 */
function columnsRound(view: Box, frame: Box, titleBox: Box): Columns | undefined {
  const left: Box = {
    ...{ minX: frame.minX + room.inside, maxX: titleBox.minX - room.between },
    ...{ minY: frame.minY + room.inside, maxY: frame.maxY - room.inside },
  };
  const right: Box = {
    ...{ minX: titleBox.minX, maxX: frame.maxX - room.inside },
    ...{ minY: titleBox.maxY + room.inside, maxY: frame.maxY - room.inside },
  };
  const later = (first: readonly Box[]) => (page: number) => (page > 0 ? [left, right] : first);
  const under = view.minY - room.between;
  const [wide, high] = [view.maxX - view.minX, view.maxY - view.minY];
  const isLow = high < room.low && wide > 1.5 * high;
  if (isLow && view.maxX <= right.maxX && under - right.minY > room.high)
    return later([
      { ...left, maxY: under },
      { ...right, maxY: under },
    ]);
  const beside = { ...right, minX: view.maxX + room.between };
  const isClear = view.minY >= left.minY && (view.minY >= right.minY || view.maxX <= left.maxX);
  if (!isClear || beside.maxX - beside.minX < room.wide) return undefined;
  const below = { ...left, maxX: Math.min(left.maxX, view.maxX), maxY: under };
  const isWorth = below.maxY - below.minY > room.high && below.maxX - below.minX > room.wide;
  return later(isWorth ? [beside, below] : [beside]);
}

/** What is written, or nothing where a row is higher than a column of this paper. */
function flowedOr(write: () => Marks[]): Marks[] | undefined {
  try {
    return write();
  } catch (error) {
    if (error instanceof RangeError) return undefined;
    throw error;
  }
}

/** How wide and high some paths are together, mm. */
export function sizeOf(paths: readonly Path[]): SetUpDrawn["bare"] {
  const { minX, maxX, minY, maxY } = extentsOf(paths)!;
  return { wide: maxX - minX, high: maxY - minY };
}
