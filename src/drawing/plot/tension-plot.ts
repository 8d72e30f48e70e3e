import { step } from "../../step/step.ts";
import { lettering, textLength } from "../sheet/lettering.ts";
import { type Marks, type Sheet, type SheetLine, type SheetText, together } from "../sheet/sheet.ts";
import { stroke } from "../sheet/strokes.ts";
import { type Axis, axisOver, placeOn, uprightAxis } from "./axis.ts";
import { bar } from "./bar.ts";
import { numberText } from "./number-text.ts";
import { emptyPlot, said } from "./plot-paper.ts";

type Usual = { readonly least: number; readonly most: number };

/** Strings from the highest to the lowest: tension in N, and from which to which it is usual where that is known. */
export type TensionPlotInput = {
  readonly strings: readonly {
    readonly name: string;
    readonly tension: number;
    readonly usual: Usual | null;
  }[];
};

/** Width of a bar, from it or its number to the mark of what is usual, half the width of that mark's ends; mm on paper. */
const wide = 12;
const beside = 2.5;
const cap = 1.5;

/** A bar for each string's tension, highest string first, and beside it the range that is usual for it. */
export const tensionPlot = step("plot.tension", 1, ({ strings }: TensionPlotInput): Sheet => {
  const plot = emptyPlot();
  const { frame, titleBox } = plot;
  const left = frame.minX + 24;
  const lowest = frame.minY + 35;
  const values = strings.flatMap(({ tension, usual }) => [tension, ...(usual === null ? [] : [usual.most])]);
  const axis = axisOver([0, ...values], lowest, titleBox.minY - 12, 10);
  const pitch = (frame.maxX - 6 - left) / strings.length;
  const all = strings.reduce((sum, { tension }) => sum + tension, 0);
  const parts = strings.map((string, i) => column(string, axis, left + pitch * (i + 0.5)));
  const notes = [
    `HIGHEST STRING FIRST.   ALL STRINGS TOGETHER: ${numberText(all, 1)} N`,
    "THICK LINE BESIDE A BAR: FROM LEAST TO MOST THAT IS USUAL FOR THE STRING (DEFAULT, CONFIRM)",
  ];
  const under = notes.map((text, i) => said(text, frame.minX + 4, frame.minY + 9 - i * 5.5));
  const ground = stroke("axis", { x: left, y: lowest }, { x: frame.maxX - 6, y: lowest });
  return {
    ...plot,
    ...together([
      uprightAxis(axis, left, "TENSION AT PITCH, N"),
      ...parts,
      { lines: [ground], texts: under },
    ]),
  };
});

function column(string: TensionPlotInput["strings"][number], axis: Axis, x: number): Marks {
  const { name, tension, usual } = string;
  const top = placeOn(axis, tension);
  const number = said(`${numberText(tension, 1)} N`, x, top + 1.5, "center");
  const half = Math.max(wide, textLength(number)) / 2;
  const words = usual === null ? ["NO RANGE", "KNOWN"] : ["USUAL", usualText(usual)];
  const texts: SheetText[] = [
    number,
    { ...said(name, x, axis.start - 6, "center"), height: lettering.title },
    ...words.map((text, i) => said(text, x, axis.start - 11.5 - 4.5 * i, "center")),
  ];
  const range = usual === null ? [] : rangeMark(x + half + beside, axis, usual);
  return { lines: [...bar(x, wide, axis.start, top, "hatched"), ...range], texts };
}

function usualText({ least, most }: Usual): string {
  const short = (value: number) => Number(Number(value.toFixed(1)).toPrecision(3));
  return `${short(least)} TO ${short(most)} N`;
}

function rangeMark(x: number, axis: Axis, { least, most }: Usual): SheetLine[] {
  const [low, high] = [placeOn(axis, least), placeOn(axis, most)];
  const level = (y: number) => stroke("range", { x: x - cap, y }, { x: x + cap, y });
  return [stroke("range", { x, y: low }, { x, y: high }), level(low), level(high)];
}
