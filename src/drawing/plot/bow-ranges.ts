import type { Point } from "../../geometry/point.ts";
import { hatched } from "../sheet/hatch.ts";
import { lettering, textLength } from "../sheet/lettering.ts";
import { type Marks, together } from "../sheet/sheet.ts";
import { spreadOut } from "../sheet/spread-out.ts";
import { stroke } from "../sheet/strokes.ts";
import { arcFrom } from "./arc-from.ts";
import type { BowAnglesPlotInput } from "./bow-angles-input.ts";
import { degreesText } from "./degrees-text.ts";
import { said } from "./plot-paper.ts";

/** How long a string's range is drawn, how high over the crown its angle is written; mm on paper. */
const long = 21;
const over = 20;
const hatching = 0.8;

/** Each inner string's range between its two tilts, on its treble side, with the angle over it at the end of a thin line. */
export function bowRanges({ strings }: BowAnglesPlotInput, places: readonly Point[], side: 1 | -1): Marks {
  const inner = strings.flatMap(({ name, range }, i) => {
    if (range === null) return [];
    const [low, high] = [-range.tilt.treble, -range.tilt.bass].map((tilt) => (tilt * Math.PI) / 180);
    const [from, to] = side === 1 ? [low!, high!] : [Math.PI - high!, Math.PI - low!];
    const { x, y } = places[i]!;
    const middle = (from + to) / 2;
    const tip = { x: x + 0.7 * long * Math.cos(middle), y: y + 0.7 * long * Math.sin(middle) };
    const arc = arcFrom(places[i]!, long, from, to);
    const wedge = { closed: true, points: [...arc.points, { x, y, bulge: 0 }] };
    return [{ arc, wedge, tip, words: `${name} ${degreesText(range.angle)}` }];
  });
  const { height } = lettering;
  const longest = Math.max(0, ...inner.map(({ words }) => textLength({ text: words, height })));
  const spots = spreadOut(
    inner.map(({ tip }) => tip.x),
    longest + 3,
  );
  return together(
    inner.map(({ arc, wedge, tip, words }, i): Marks => {
      const foot = { x: spots[i]!, y: over - 1.2 };
      return {
        lines: [
          ...hatched([wedge], hatching),
          { weight: "dimension", path: arc },
          stroke("extension", foot, tip),
        ],
        texts: [said(words, spots[i]!, over, "center")],
      };
    }),
  );
}
