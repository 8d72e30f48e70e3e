import type { Caution } from "../../../workshop/cautions/caution.ts";
import { lettering, textLength, typeSize } from "../lettering.ts";
import type { SheetLine, SheetText } from "../sheet.ts";
import { polyline, stroke } from "../strokes.ts";
import { hung, linesHigh, type Row } from "./block.ts";
import { inCapitals } from "./in-capitals.ts";

/** How wide the part with the signal word is, and how large the sign before it, mm. */
const sizes = { word: 33, sign: 6.4 } as const;

/** What the words mean, as the two standards define them. */
export const signalMeanings =
  "DANGER: DEATH OR SEVERE INJURY FOLLOWS IF IT ISN'T AVOIDED; WARNING: IT CAN FOLLOW; CAUTION: A LESSER INJURY CAN FOLLOW; NOTICE: DAMAGE, NO INJURY (ANSI Z535, ISO 3864)";

/** A caution in its own frame: the safety alert sign, its signal word by severity, what it says and where it is from. A NOTICE, which harms nobody, has no sign. */
export function signalPanel({ signal, text, source }: Caution): Row {
  return (wide) => {
    const words = hung(inCapitals(`${text} (${source})`), sizes.word, 0, wide - sizes.word);
    const high = Math.max(linesHigh(words.length), sizes.sign + 2);
    const { title: height } = lettering;
    const middle = -high / 2;
    const start = signal === "NOTICE" ? 1.5 : sizes.sign + 2.5;
    const word: SheetText = {
      ...{ text: signal, x: start, y: middle - height / 2, height, turn: 0, align: "left" },
    };
    if (start + textLength(word) > sizes.word) throw new RangeError(`${signal} has no room in its panel`);
    return {
      high: high + 1,
      marks: {
        lines: [
          box(0, wide, high),
          stroke("edge", { x: sizes.word, y: 0 }, { x: sizes.word, y: -high }),
          ...(signal === "NOTICE" ? [] : alertSign(1.3, middle)),
        ],
        texts: [word, ...words],
      },
    };
  };
}

function box(from: number, to: number, high: number): SheetLine {
  const corners = [
    { x: from, y: 0 },
    { x: to, y: 0 },
    { x: to, y: -high },
    { x: from, y: -high },
  ];
  return { weight: "frame", path: { ...polyline(corners), closed: true } };
}

/** The safety alert sign: a triangle round an exclamation mark, its left end at x, its middle at y. */
function alertSign(x: number, y: number): SheetLine[] {
  const { sign } = sizes;
  const high = (sign * Math.sqrt(3)) / 2;
  const [foot, top, mid] = [y - high / 2, y + high / 2, x + sign / 2];
  const sides = [
    { x, y: foot },
    { x: x + sign, y: foot },
    { x: mid, y: top },
  ];
  const dot = [
    { x: mid - 0.3, y: foot + 0.5 },
    { x: mid + 0.3, y: foot + 0.5 },
    { x: mid + 0.3, y: foot + 1.1 },
    { x: mid - 0.3, y: foot + 1.1 },
  ];
  return [
    { weight: "outline", path: { ...polyline(sides), closed: true } },
    stroke("station", { x: mid, y: foot + 1.7 }, { x: mid, y: foot + 3.6 }),
    { weight: "arrow", path: { ...polyline(dot), closed: true } },
  ];
}

/** The height of the lettering of a signal word, mm: larger than that of what it is about. */
export const signalHeight = typeSize(lettering.title);
