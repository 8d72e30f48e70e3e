import type { Point } from "../../geometry/point.ts";
import type { Annotation } from "./annotate.ts";
import { dimensionText, type Wording } from "./dimension-text.ts";
import { baseFromMiddle, lettering, textBox, textLength } from "./lettering.ts";
import type { Marks, SheetLine, SheetText } from "./sheet.ts";
import { arrow, arrowSize, stroke } from "./strokes.ts";

/**
 * The distance of two places of a view along one axis, mm of the model. What is written is measured between the two, so it can't
 * differ from what is drawn.
 */
export type Linear = Wording & {
  readonly name: string;
  readonly along: "x" | "y";
  readonly from: Point;
  readonly to: Point;
};

/** Where a dimension's text stands along its line: between its ends, or so many mm of paper past its greater or lesser one. */
type Spot = { readonly at: "between" } | { readonly at: "past" | "before"; readonly by: number };

/** Lanes of dimension lines: the first one's distance from the view, and theirs from each other, mm on paper. */
export const lanes = { first: 8, pitch: 7, most: 40 } as const;

const under = { gap: 1, past: 1.5 };

/** What a dimension written on lines of text keeps between its line and its text's box, mm on paper. */
const overLine = 0.7;

/** The value that a linear dimension shows, mm of the model. */
export function measured({ along, from, to }: Linear): number {
  return Math.abs(to[along] - from[along]);
}

/**
 * A dimension outside a view, in lanes from `edge` (mm on paper, from the view's origin) outward: above or right of it where
 * `outward` is 1, below or left where it is -1.
 */
export function stacked(of: Linear, scale: number, edge: number, outward: 1 | -1): Annotation {
  return {
    name: of.name,
    ways: function* () {
      for (let lane = 0; lane < lanes.most; lane++) {
        const across = edge + outward * (lanes.first + lane * lanes.pitch);
        for (const spot of spots(of, scale, [3])) yield marksOf(of, scale, across, spot, [true, true]);
      }
    },
  };
}

/**
 * A dimension whose line crosses the view, beside the places that it measures: shifted by so many mm of paper, the first shift
 * that is clear. `touches` says whether the outline still lies under an end of the line that is shifted so far; where not,
 * a thin line leads there.
 */
export function through(
  of: Linear,
  scale: number,
  shifts: readonly number[],
  touches: (shift: number) => readonly [boolean, boolean],
  sides: readonly ("past" | "before")[] = ["past"],
): Annotation {
  const place = of.from[of.along === "x" ? "y" : "x"] * scale;
  return {
    name: of.name,
    ways: function* () {
      const past = Array.from({ length: 30 }, (_, k) => 4 + 2 * k);
      for (const by of past) {
        for (const shift of shifts) {
          const [first, second] = touches(shift);
          for (const spot of spots(of, scale, [by], sides)) {
            yield marksOf(of, scale, place + shift, spot, [!first, !second]);
          }
        }
      }
    },
  };
}

function* spots(
  of: Linear,
  scale: number,
  past: readonly number[],
  sides: readonly ("past" | "before")[] = ["past", "before"],
): Iterable<Spot> {
  const room = measured(of) * scale;
  const long = textLength({ text: dimensionText(measured(of), of), height: lettering.height });
  if (room > long + 2 * arrowSize.length + 2) yield { at: "between" };
  const outside = arrowsOutside(room) ? arrowSize.length : 0;
  for (const by of past) {
    for (const at of sides) yield { at, by: by + outside };
  }
}

function arrowsOutside(room: number): boolean {
  return room < 2 * arrowSize.length + 2;
}

function marksOf(
  of: Linear,
  scale: number,
  across: number,
  spot: Spot,
  leads: readonly [boolean, boolean],
): Marks {
  const { along } = of;
  const other = along === "x" ? "y" : "x";
  const ends = [of.from, of.to].map((p, i) => ({
    s: p[along] * scale,
    t: p[other] * scale,
    lead: leads[i]!,
  }));
  ends.sort((a, b) => a.s - b.s);
  const [low, high] = [ends[0]!.s, ends[1]!.s];
  const at = (s: number, t: number): Point => (along === "x" ? { x: s, y: t } : { x: t, y: s });
  const text = textAt(of, at, across, low, high, spot);
  const box = textBox(text);
  const [least, most] = along === "x" ? [box.minX, box.maxX] : [box.minY, box.maxY];
  const outside = arrowsOutside(high - low);
  const stub = outside ? arrowSize.length + 2 : 0;
  const [start, end] = [Math.min(low - stub, least), Math.max(high + stub, most)];
  const turn = along === "x" ? 0 : Math.PI / 2;
  const lines: SheetLine[] = [
    stroke("dimension", at(start, across), at(end, across)),
    arrow(at(low, across), turn + (outside ? 0 : Math.PI)),
    arrow(at(high, across), turn + (outside ? Math.PI : 0)),
  ];
  for (const { s, t, lead } of ends) {
    const away = Math.sign(across - t);
    if (!lead || Math.abs(across - t) < under.gap) continue;
    lines.push(stroke("extension", at(s, t + away * under.gap), at(s, across + away * under.past)));
  }
  return { lines, texts: [text] };
}

function textAt(
  of: Linear,
  at: (s: number, t: number) => Point,
  across: number,
  low: number,
  high: number,
  spot: Spot,
): SheetText {
  const text = dimensionText(measured(of), of);
  const { height } = lettering;
  const half = textLength({ text, height }) / 2;
  const middle =
    spot.at === "between"
      ? (low + high) / 2
      : spot.at === "past"
        ? high + spot.by + half
        : low - spot.by - half;
  const box = textBox({ text, x: 0, y: 0, height, turn: 0, align: "center" });
  const clear = (box.maxY - box.minY) / 2 + overLine;
  const turn = of.along === "x" ? 0 : 90;
  const base = baseFromMiddle(height);
  const place = turn === 0 ? at(middle, across + clear + base) : at(middle, across - clear - base);
  return { text, ...place, height, turn, align: "center" };
}
