import type { Annotated } from "../annotate.ts";
import { heading, paragraph } from "../bench/block.ts";
import { flowed } from "../bench/flowed.ts";
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
  readonly picture: (scale: number) => Annotated;
  readonly pictureWords: string;
  readonly words: SetUpWords;
};

/** What is kept free inside the frame, and between picture and columns; the least width of a column beside the picture, and height of one under it, mm. */
const room = { inside: 3, between: 5, wide: 120, high: 45 } as const;

/** How many pages a set-up's sheet has at most before a larger paper is taken. */
const mostPages = 2;

type Scale = (typeof scales)[number];

/**
 * The pages of a set-up's sheet without their titles: the picture at the upper left of the first, the words in a column over the title's place, then
 * under the picture. On the first paper, and at the largest scale, that hold it on two pages at most.
 */
export function setUpPages(drawn: SetUpDrawn): Sheet[] {
  for (const paper of drawn.papers) {
    for (const scale of scales) {
      const pages = pagesOn(paper, scale, drawn);
      if (pages !== undefined && pages.length <= mostPages) return pages;
    }
  }
  throw new RangeError(`the sheet of ${drawn.name} has room on no paper`);
}

function pagesOn(
  paper: PaperSize,
  scale: Scale,
  { name, picture, pictureWords, words }: SetUpDrawn,
): Sheet[] | undefined {
  const { frame, titleBox } = emptySheet(paper, "");
  const left: Box = {
    ...{ minX: frame.minX + room.inside, maxX: titleBox.minX - room.between },
    ...{ minY: frame.minY + room.inside, maxY: frame.maxY - room.inside },
  };
  const right: Box = {
    ...{ minX: titleBox.minX, maxX: frame.maxX - room.inside },
    ...{ minY: titleBox.maxY + room.inside, maxY: frame.maxY - room.inside },
  };
  const view = inPlace(picture(scale.factor), left);
  if (view === undefined) return undefined;
  const { maxX, minY } = boxOf(view);
  const beside = { ...right, minX: maxX + room.between };
  const under = { ...left, maxY: minY - room.between };
  const isClear = minY >= left.minY && (minY >= right.minY || maxX <= left.maxX);
  if (!isClear || beside.maxX - beside.minX < room.wide) return undefined;
  const columns = (page: number) =>
    page > 0 ? [left, right] : under.maxY - under.minY > room.high ? [beside, under] : [beside];
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

/** The picture in the upper left corner of a box; nothing where a name in it has no place. */
function inPlace(picture: Annotated, { minX, maxY }: Box): Marks | undefined {
  if (picture.kind !== "ok") return undefined;
  const box = boxOf(picture.marks);
  return moved(picture.marks, minX - box.minX, maxY - box.maxY);
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
