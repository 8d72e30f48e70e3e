import type { Point } from "../../geometry/point.ts";
import { step } from "../../step/step.ts";
import { boxOf } from "../sheet/lettering.ts";
import { moved } from "../sheet/moved.ts";
import { type Sheet, together } from "../sheet/sheet.ts";
import type { BowAnglesPlotInput } from "./bow-angles-input.ts";
import { bowCrown } from "./bow-crown.ts";
import { type BowLine, bowLines } from "./bow-lines.ts";
import { bowRanges } from "./bow-ranges.ts";
import { degreesText } from "./degrees-text.ts";
import { emptyPlot, said } from "./plot-paper.ts";

/** Paper to model; the largest at which half the crown is no wider than `widest` mm on paper, else the last. */
const scales = [5, 4, 3, 2.5, 2, 1] as const;
const widest = 72;

/** How far past the outer strings the bow's lines end, mm on paper. */
const past = 18;

/** The bow on the strings, seen from the tail: the tilts at which it changes strings, each inner string's range, the outermost tilts. */
export const bowAnglesPlot = step("plot.bow-angles", 1, (given: BowAnglesPlotInput): Sheet => {
  const plot = emptyPlot();
  const { frame, titleBox } = plot;
  const half = Math.max(...given.strings.map(({ y }) => Math.abs(y)));
  const scale = scales.find((factor) => half * factor <= widest) ?? 1;
  const side = given.hand === "left" ? -1 : 1;
  const top = given.crown.z + given.crown.radius;
  const onPaper = ({ y, z }: { readonly y: number; readonly z: number }): Point => ({
    ...{ x: side * y * scale, y: (z - top) * scale },
  });
  const places = given.strings.map(onPaper);
  const view = together([
    bowCrown(given, places, onPaper, scale),
    ...bowLines(linesOf(given, places, side), half * scale + past),
    bowRanges(given, places, side),
  ]);
  const { minY, maxY } = boxOf(view);
  const middle = {
    x: (frame.minX + frame.maxX) / 2,
    y: (frame.minY + 18 + titleBox.minY) / 2 - (minY + maxY) / 2,
  };
  const texts = notes(scale).map((text, i) => said(text, frame.minX + 4, frame.minY + 14 - i * 5));
  return { ...plot, ...together([moved(view, middle.x, middle.y), { lines: [], texts }]) };
});

function notes(scale: number): string[] {
  return [
    `SEEN FROM THE TAIL, ${scale}:1. TILTS ARE FROM LEVEL. RINGS MARK THE STRINGS' CENTRES, NOT THEIR SIZE`,
    "FULL LINES: THE BOW ON TWO STRINGS AT ONCE. HATCHED: HOW FAR IT TILTS ON ONE STRING ALONE",
    "DASHED, MOST: THE OUTERMOST TILTS (DEFAULT, CONFIRM)",
  ];
}

/** The lines on which the bow touches two strings, each drawn through the inner one, and the outermost tilts. */
function linesOf(given: BowAnglesPlotInput, places: readonly Point[], side: 1 | -1): BowLine[] {
  const { strings, outermost } = given;
  const line = (i: number, tilt: number, on: readonly number[]): BowLine => ({
    ...{ through: places[i]!, fall: side * tilt, touches: on.map((k) => places[k]!) },
    weight: on.length > 1 ? "edge" : "hidden",
    words: `${on.map((k) => strings[k]!.name).join(", ")}${on.length > 1 ? "" : " MOST"} ${degreesText(Math.abs(tilt))}`,
  });
  const changes = strings.flatMap(({ range }, i) => {
    if (range === null) return [];
    const below = line(i, range.tilt.bass, [i, i + 1]);
    // The tilt toward the treble is the neighbour's own toward the bass, but beside the highest string.
    return i > 1 ? [below] : [line(i, range.tilt.treble, [i - 1, i]), below];
  });
  const last = strings.length - 1;
  return [...changes, line(0, outermost.treble, [0]), line(last, outermost.bass, [last])];
}
