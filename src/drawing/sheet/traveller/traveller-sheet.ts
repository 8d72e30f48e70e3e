import { rectangleOf } from "../../../geometry/rectangle.ts";
import { step } from "../../../step/step.ts";
import { linesHigh, paragraph } from "../bench/block.ts";
import { flowed } from "../bench/flowed.ts";
import { inCapitals } from "../bench/in-capitals.ts";
import { moved } from "../moved.ts";
import type { PaperSize } from "../neck/input.ts";
import { type Box, type Marks, type Sheet, together } from "../sheet.ts";
import { emptySheet } from "../sheet-frame.ts";
import { frontSections, workSections } from "./traveller-sections.ts";
import type { TravellerWords } from "./traveller-words.ts";

/** What is kept free inside the frame and between two columns, and how high the foot is, mm. */
const room = { inside: 3, between: 6, foot: linesHigh(2) + 1 } as const;

/** The narrowest that one of two columns is, mm: on smaller paper there is one. */
const leastColumn = 150;

/**
 * The pages of a traveller, on the first of its papers that its rows go on: whose it is, what stands against it and the lists in two columns, then the
 * sequence of work. Each page says at its foot whose it is and which of how many.
 */
export const travellerSheet = step("sheet.traveller", 1, (words: TravellerWords): readonly Sheet[] => {
  for (const paper of words.papers) {
    const pages = pagesOn(paper, words);
    if (pages !== undefined) return pages;
  }
  throw new RangeError("the traveller has room on no paper");
});

function pagesOn(paper: PaperSize, words: TravellerWords): Sheet[] | undefined {
  const empty = emptySheet(paper, "1:1");
  const { frame } = empty;
  const titleBox: Box = { ...frame, maxY: frame.minY + room.foot };
  const whole: Box = {
    ...{ minX: frame.minX + room.inside, maxX: frame.maxX - room.inside },
    ...{ minY: titleBox.maxY + room.inside, maxY: frame.maxY - room.inside },
  };
  const wide = (whole.maxX - whole.minX - room.between) / 2;
  const two = [
    { ...whole, maxX: whole.minX + wide },
    { ...whole, minX: whole.maxX - wide },
  ];
  try {
    const written = [
      ...flowed(frontSections(words), () => (wide < leastColumn ? [whole] : two)),
      ...flowed(workSections(words), () => [whole]),
    ];
    return written.map((marks, i) => ({
      ...{ ...empty, titleBox },
      ...together([marks, footOf(words, i + 1, written.length, titleBox), framesOf(frame, titleBox)]),
    }));
  } catch (error) {
    if (error instanceof RangeError) return undefined;
    throw error;
  }
}

function footOf(
  { order, fingerprint }: TravellerWords,
  page: number,
  pages: number,
  { minX, maxX, maxY }: Box,
): Marks {
  const lines = [
    `ORDER ${inCapitals(order)}   TRAVELLER   PAGE ${page} OF ${pages}   FINGERPRINT OF THE ORDER ${fingerprint}`,
    "LOCAL CODES, THE MACHINE'S MANUAL AND A COMPETENT PERSON COME FIRST",
  ];
  return together(
    lines.map((line, i) => moved(paragraph(line)(maxX - minX).marks, minX + 1, maxY - 0.5 - i * 4.4)),
  );
}

function framesOf(frame: Box, titleBox: Box): Marks {
  return {
    lines: [frame, titleBox].map((box) => ({ weight: "frame", path: rectangleOf(box) })),
    texts: [],
  };
}
