import { lettering } from "../sheet/lettering.ts";
import type { Sheet, SheetText } from "../sheet/sheet.ts";
import { lineStep } from "../sheet/sheet-frame.ts";

/** A plot's paper, mm: small enough to print at its own size on either of the papers that offices have. */
const paper = { id: "A4 or letter", width: 270, height: 195 } as const;

const border = 8;

/** How many lines the title has room for, its heading included. */
export const plotTitleLines = 3;

/** An empty plot: its frame, and the title's place along its upper edge. What is drawn goes under that, within the frame. */
export function emptyPlot(): Sheet {
  const frame = {
    ...{ minX: border, minY: border, maxX: paper.width - border, maxY: paper.height - border },
  };
  const titleBox = { ...frame, minY: frame.maxY - plotTitleLines * lineStep - 4 };
  return { paper, frame, titleBox, scale: "none", lines: [], texts: [] };
}

/** A level text on a plot. */
export function said(text: string, x: number, y: number, align: SheetText["align"] = "left"): SheetText {
  return { text, x, y, height: lettering.height, turn: 0, align };
}
