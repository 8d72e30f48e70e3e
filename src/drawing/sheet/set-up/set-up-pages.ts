import type { Annotated } from "../annotate.ts";
import { flowed } from "../bench/flowed.ts";
import { boxOf, lettering } from "../lettering.ts";
import { moved } from "../moved.ts";
import type { PaperSize } from "../neck/input.ts";
import { scales } from "../scales.ts";
import { type Box, type Marks, type Sheet, type SheetText, together } from "../sheet.ts";
import { emptySheet } from "../sheet-frame.ts";
import { named } from "../view-name.ts";
import { type SetUpWords, setUpSections } from "./set-up-words.ts";

/** A set-up's sheet before it is laid out: its name, the picture at a scale, the words under that, and all that is written. */
export type SetUpDrawn = {
  readonly name: string;
  readonly papers: readonly PaperSize[];
  readonly picture: (scale: number) => Annotated;
  readonly pictureWords: string;
  readonly words: SetUpWords;
};

/** What is kept free inside the frame, between picture and columns, and over the picture for the sheet's name; the least width or height of a column, mm. */
const room = { inside: 3, between: 5, name: 9, least: 60 } as const;

/** How many pages a set-up's sheet has at most before a larger paper is taken. */
const mostPages = 2;

type Scale = (typeof scales)[number];

/**
 * The pages of a set-up's sheet without their titles: the picture at the upper left of the first, the words in a column over the title's place, then
 * under the picture. On the first paper that holds it on one page, or else on two; among scales the largest with the fewest pages.
 */
export function setUpPages(drawn: SetUpDrawn): Sheet[] {
  for (const paper of drawn.papers) {
    const ways = scales.flatMap((scale) => {
      const pages = pagesOn(paper, scale, drawn);
      return pages === undefined || pages.length > mostPages ? [] : [pages];
    });
    const least = Math.min(...ways.map(({ length }) => length));
    const best = ways.find(({ length }) => length === least);
    if (best !== undefined) return best;
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
    ...{ minY: frame.minY + room.inside, maxY: frame.maxY - room.name },
  };
  const right: Box = {
    ...{ minX: titleBox.minX, maxX: frame.maxX - room.inside },
    ...{ minY: titleBox.maxY + room.inside, maxY: frame.maxY - room.inside },
  };
  if (left.maxX - left.minX < room.least) return undefined;
  const view = inPlace(picture(scale.factor), `${pictureWords}  ${scale.text}`, left);
  if (view === undefined) return undefined;
  const under = { ...left, maxY: boxOf(view).minY - room.between };
  const columns = (page: number) => {
    if (page > 0) return [left, right];
    return under.maxY - under.minY > room.least ? [right, under] : [right];
  };
  const written = flowedOr(() => flowed(setUpSections(words), columns));
  return written?.map((marks, page): Sheet => {
    const title = textAt(`SET-UP SHEET: ${name}`, left.minX, frame.maxY - 6);
    const parts: Marks[] = [{ lines: [], texts: [title] }, marks, ...(page === 0 ? [view] : [])];
    return {
      ...{ ...emptySheet(paper, scale.text), ...together(parts) },
      notes: [
        `SET-UP SHEET ${name}   PAGE ${page + 1} OF ${written.length}`,
        "FROM ABOVE, AS IT LIES BEFORE WHOEVER CUTS: TAKE NO MEASURE FROM THE PICTURE",
      ],
    };
  });
}

/** The picture with its words under it, in the upper left corner of a box; nothing where it has no room or no place for all its names. */
function inPlace(picture: Annotated, words: string, { minX, maxX, minY, maxY }: Box): Marks | undefined {
  if (picture.kind !== "ok") return undefined;
  const { minX: from, maxX: to } = boxOf(picture.marks);
  const view = named(picture, words, "", from, to);
  if (view.kind !== "ok") return undefined;
  const box = boxOf(view.marks);
  if (box.maxX - box.minX > maxX - minX || box.maxY - box.minY > maxY - minY) return undefined;
  return moved(view.marks, minX - box.minX, maxY - box.maxY);
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

function textAt(text: string, x: number, y: number): SheetText {
  return { text, x, y, height: lettering.title, turn: 0, align: "left" };
}
