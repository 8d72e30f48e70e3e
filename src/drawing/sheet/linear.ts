import type { Point } from "../../geometry/point.ts";
import type { Annotation } from "./annotate.ts";
import { dimensionText, type Wording } from "./dimension-text.ts";
import { baseFromMiddle, lettering, textBox, textLength } from "./lettering.ts";
import type { Marks, SheetLine, SheetText } from "./sheet.ts";
import { arrow, arrowSize, corridor, stroke } from "./strokes.ts";

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

/**
 * Where a dimension's text stands: over its line between its ends, or so many mm of paper past its greater or lesser one. Past the
 * end of an upright line it stands level, on a shelf to the right (1) or left (-1).
 */
type Spot =
  | { readonly at: "between" }
  | { readonly at: "past" | "before"; readonly by: number; readonly shelf: 1 | -1 };

/**
 * Lanes of dimension lines: the first one's distance from the view, and theirs from each other, mm on paper; how many are tried, and
 * how far outward the thin lines to them are kept free.
 */
export const lanes = { first: 8, pitch: 7, most: 40, kept: 20 } as const;

/** How long a shelf is before its text, mm on paper. */
const shelfLength = 2;

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
  const far = edge + outward * lanes.kept;
  const keep = [of.from, of.to].map(({ x, y }) =>
    of.along === "x"
      ? corridor({ x: x * scale, y: y * scale }, { x: x * scale, y: far })
      : corridor({ x: x * scale, y: y * scale }, { x: far, y: y * scale }),
  );
  return {
    ...{ name: of.name, keep },
    ways: function* () {
      for (let lane = 0; lane < lanes.most; lane++) {
        const across = edge + outward * (lanes.first + lane * lanes.pitch);
        for (const spot of spots(of, scale, [4, 6, 9, 12], [outward === 1 ? -1 : 1, outward]))
          yield marksOf(of, scale, across, spot, [true, true]);
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
): Annotation {
  const place = of.from[of.along === "x" ? "y" : "x"] * scale;
  return {
    name: of.name,
    ways: function* () {
      for (const rises of [range(4, 24), range(26, 64)]) {
        for (const shift of shifts) {
          const [first, second] = touches(shift);
          for (const by of rises) {
            for (const spot of spots(of, scale, [by], [-1, 1], ["past"])) {
              yield marksOf(of, scale, place + shift, spot, [!first, !second]);
            }
          }
        }
      }
    },
  };
}

function range(from: number, to: number): number[] {
  return Array.from({ length: (to - from) / 2 + 1 }, (_, k) => from + 2 * k);
}

function* spots(
  of: Linear,
  scale: number,
  past: readonly number[],
  shelves: readonly (1 | -1)[],
  sides: readonly ("past" | "before")[] = ["past", "before"],
): Iterable<Spot> {
  const room = measured(of) * scale;
  const long = textLength({ text: dimensionText(measured(of), of), height: lettering.height });
  if (room > long + 2 * arrowSize.length + 2) yield { at: "between" };
  const outside = arrowsOutside(room) ? arrowSize.length : 0;
  for (const by of past) {
    for (const at of sides) {
      for (const shelf of of.along === "x" ? ([1] as const) : shelves) yield { at, by: by + outside, shelf };
    }
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
  const outside = arrowsOutside(high - low);
  const stub = outside ? arrowSize.length + 2 : 0;
  const words = wordsAt(of, at, across, low, high, spot);
  const turn = along === "x" ? 0 : Math.PI / 2;
  const [start, end] = [Math.min(low - stub, words.from), Math.max(high + stub, words.to)];
  const lines: SheetLine[] = [
    stroke("dimension", at(start, across), at(end, across)),
    ...words.shelf,
    arrow(at(low, across), turn + (outside ? 0 : Math.PI)),
    arrow(at(high, across), turn + (outside ? Math.PI : 0)),
  ];
  for (const { s, t, lead } of ends) {
    const away = Math.sign(across - t);
    if (!lead || Math.abs(across - t) < under.gap) continue;
    lines.push(stroke("extension", at(s, t + away * under.gap), at(s, across + away * under.past)));
  }
  return { lines, texts: [words.text] };
}

/** A dimension's text, from where to where along it its line must reach for it, and the shelf under it where it has one. */
type Words = {
  readonly text: SheetText;
  readonly from: number;
  readonly to: number;
  readonly shelf: readonly SheetLine[];
};

function wordsAt(
  of: Linear,
  at: (s: number, t: number) => Point,
  across: number,
  low: number,
  high: number,
  spot: Spot,
): Words {
  const text = dimensionText(measured(of), of);
  const { height } = lettering;
  const half = textLength({ text, height }) / 2;
  const base = baseFromMiddle(height);
  if (spot.at !== "between" && of.along === "y") {
    const s = spot.at === "past" ? high + spot.by : low - spot.by;
    const end = across + spot.shelf * shelfLength;
    const align = spot.shelf === 1 ? "left" : "right";
    const place = { x: end + spot.shelf * 0.8, y: s + base, height, turn: 0, align } as const;
    const shelf = [stroke("dimension", at(s, across), at(s, end))];
    return { text: { text, ...place }, from: s, to: s, shelf };
  }
  const middle =
    spot.at === "between"
      ? (low + high) / 2
      : spot.at === "past"
        ? high + spot.by + half
        : low - spot.by - half;
  const box = textBox({ text, x: 0, y: 0, height, turn: 0, align: "center" });
  const clear = (box.maxY - box.minY) / 2 + overLine;
  const turn = of.along === "x" ? 0 : 90;
  const place = turn === 0 ? at(middle, across + clear + base) : at(middle, across - clear - base);
  const written: SheetText = { text, ...place, height, turn, align: "center" };
  return { text: written, from: middle - half, to: middle + half, shelf: [] };
}
