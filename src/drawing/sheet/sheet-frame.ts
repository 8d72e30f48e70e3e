import { lettering, typeSize } from "./lettering.ts";
import type { Box, Sheet } from "./sheet.ts";

/** The least border of a sheet, mm: what a clip or a folder's rail takes. */
const border = 8;

/** The title block's width, mm. */
export const titleWidth = 178;

/** From one line of text to the next, mm. */
export const lineStep = typeSize(lettering.height) * 1.35;

/** How many lines the title block has room for: its own, and reasons of what was overruled. */
export const titleLines = 9;

/** An empty sheet of a paper, the long side across: its frame, and the title's place in the lower right corner. */
export function emptySheet(
  paper: { readonly id: string; readonly width: number; readonly height: number; readonly margin: number },
  scale: string,
): Sheet {
  const [width, height] = [Math.max(paper.width, paper.height), Math.min(paper.width, paper.height)];
  const inset = Math.max(border, paper.margin + 2);
  const frame: Box = { minX: inset, minY: inset, maxX: width - inset, maxY: height - inset };
  const titleBox: Box = {
    ...{ minX: frame.maxX - titleWidth, maxX: frame.maxX },
    ...{ minY: frame.minY, maxY: frame.minY + titleLines * lineStep + 4 },
  };
  return { paper: { id: paper.id, width, height }, frame, titleBox, scale, lines: [], texts: [] };
}
