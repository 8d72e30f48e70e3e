import type { Point } from "../../geometry/point.ts";
import type { Annotation } from "./annotate.ts";
import { dimensionText, type Wording } from "./dimension-text.ts";
import { baseFromMiddle, lettering, textBox } from "./lettering.ts";
import { lanes } from "./linear.ts";
import { type Marks, type SheetLine, type SheetText, together } from "./sheet.ts";
import { spreadOut } from "./spread-out.ts";
import { arrow, polyline, stroke } from "./strokes.ts";

/** A place along a view that is measured from the common origin, mm of the model; `y` is where its thin line starts. */
export type RunningPlace = Wording & { readonly x: number; readonly y: number };

/** How far under the line of a running dimension a text that had to step aside has done so, mm on paper. */
const jog = { start: 1.5, end: 6 };

/** The radius of the ring that marks the origin, mm on paper. */
const originRing = 1.2;

/**
 * Distances from one origin on one line under a view (running dimensions): a ring at the origin, an arrowhead at each place, and each
 * distance upright under its place; texts too near each other step aside. `edge` is the view's lower edge, mm on paper.
 */
export function running(
  name: string,
  origin: Point,
  places: readonly RunningPlace[],
  scale: number,
  edge: number,
): Annotation {
  const sorted = [...places].sort((a, b) => a.x - b.x);
  return {
    name,
    ways: function* () {
      for (let lane = 0; lane < lanes.most; lane++) {
        yield rowAt(sorted, origin, scale, edge - lanes.first - lane * (lanes.pitch / 2));
      }
    },
  };
}

function rowAt(places: readonly RunningPlace[], origin: Point, scale: number, lane: number): Marks {
  const { height } = lettering;
  const box = textBox({ text: "0", x: 0, y: 0, height, turn: 90, align: "left" });
  const pitch = box.maxX - box.minX + 1.3;
  const all = [...places.map(({ x, y }) => ({ x, y })), origin];
  const wide = all.map(({ x }) => x * scale);
  const spots = spreadOut(wide, pitch);
  const base = -baseFromMiddle(height);
  const parts = all.map(({ y }, i): Marks => {
    const place = places[i];
    const text = place === undefined ? "0" : dimensionText(Math.abs(place.x - origin.x), { ...place });
    const lines: SheetLine[] = [];
    if (Math.abs(y * scale - lane) > 1) {
      lines.push(
        stroke("extension", { x: wide[i]!, y: y * scale - 1 }, { x: wide[i]!, y: lane - jog.start }),
      );
    }
    if (Math.abs(spots[i]! - wide[i]!) > 0.01) {
      const path = polyline([
        { x: wide[i]!, y: lane - jog.start },
        { x: spots[i]!, y: lane - jog.end },
      ]);
      lines.push({ weight: "extension", path });
    } else
      lines.push(
        stroke("extension", { x: wide[i]!, y: lane - jog.start }, { x: wide[i]!, y: lane - jog.end }),
      );
    if (place !== undefined) lines.push(arrow({ x: wide[i]!, y: lane }, place.x < origin.x ? Math.PI : 0));
    return { lines, texts: [upright(text, spots[i]! + base, lane - jog.end - 1)] };
  });
  const ring = ringAt(origin.x * scale, lane);
  const line = stroke("dimension", { x: Math.min(...wide), y: lane }, { x: Math.max(...wide), y: lane });
  return together([{ lines: [line, ring], texts: [] }, ...parts]);
}

function upright(text: string, x: number, y: number): SheetText {
  return { text, x, y, height: lettering.height, turn: 90, align: "right" };
}

function ringAt(x: number, y: number): SheetLine {
  const points = [
    { x: x + originRing, y, bulge: 1 },
    { x: x - originRing, y, bulge: 1 },
  ];
  return { weight: "extension", path: { closed: true, points } };
}
