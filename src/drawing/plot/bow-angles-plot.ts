import { circle } from "../../geometry/circle.ts";
import type { Path } from "../../geometry/path.ts";
import type { Point } from "../../geometry/point.ts";
import { step } from "../../step/step.ts";
import { hatched } from "../sheet/hatch.ts";
import { boxOf, lettering, textLength } from "../sheet/lettering.ts";
import { moved } from "../sheet/moved.ts";
import { type Marks, type Sheet, type SheetText, together } from "../sheet/sheet.ts";
import { spreadOut } from "../sheet/spread-out.ts";
import { stroke } from "../sheet/strokes.ts";
import { type BowLine, bowLines } from "./bow-lines.ts";
import { numberText } from "./number-text.ts";
import { emptyPlot, said } from "./plot-paper.ts";

/** Between which tilts of the bow: degrees of its line from level, positive where it falls to the treble side. */
type Tilts = { readonly bass: number; readonly treble: number };

/**
 * The crown as a circle and the strings' centres in the plane across the bridge, y to the treble side, mm; highest string first.
 * An inner string's `range` is the angle between the tilts at which the bow touches it alone; an outer string has none.
 */
export type BowAnglesPlotInput = {
  readonly hand: "right" | "left";
  readonly crown: { readonly y: number; readonly z: number; readonly radius: number };
  readonly strings: readonly {
    readonly name: string;
    readonly y: number;
    readonly z: number;
    readonly range: { readonly angle: number; readonly tilt: Tilts } | null;
  }[];
  readonly outermost: Tilts;
};

/** Paper to model; the largest at which half the crown is no wider than `widest` mm on paper, else the last. */
const scales = [5, 4, 3, 2.5, 2, 1] as const;
const widest = 72;

/** How far past the outer strings the bow's lines end, how long a string's range is drawn, how high over the crown it is written; mm. */
const past = 18;
const long = 21;
const over = 20;
const hatching = 0.8;

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
    crownMarks(given, places, onPaper, scale),
    ...bowLines(linesOf(given, places, side), half * scale + past),
    rangesOf(given, places, side),
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
    "DASHED LINES: THE OUTERMOST TILTS (DEFAULT, CONFIRM)",
  ];
}

/** The lines on which the bow touches two strings, each drawn through the inner one, and the outermost tilts. */
function linesOf(given: BowAnglesPlotInput, places: readonly Point[], side: 1 | -1): BowLine[] {
  const { strings, outermost } = given;
  const line = (i: number, tilt: number, on: readonly number[]): BowLine => ({
    ...{ through: places[i]!, fall: side * tilt, touches: on.map((k) => places[k]!) },
    weight: on.length > 1 ? "edge" : "hidden",
    words: `${on.map((k) => strings[k]!.name).join(", ")}${on.length > 1 ? "" : " MOST"} ${degrees(Math.abs(tilt))}`,
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

function degrees(value: number): string {
  return `${numberText(value, 1)}°`;
}

function crownMarks(
  { crown, strings }: BowAnglesPlotInput,
  places: readonly Point[],
  onPaper: (place: { readonly y: number; readonly z: number }) => Point,
  scale: number,
): Marks {
  const reach = Math.max(...places.map(({ x }) => Math.abs(x))) + 4;
  const radius = crown.radius * scale;
  const centre = onPaper(crown);
  const ends = [reach, -reach].map((x) =>
    Math.atan2(Math.sqrt(radius ** 2 - (x - centre.x) ** 2), x - centre.x),
  );
  return {
    lines: [
      { weight: "outline", path: arcFrom(centre, radius, ends[0]!, ends[1]!) },
      ...places.map((place) => ({ weight: "curve" as const, path: circle(place, 1.1) })),
    ],
    texts: strings.map(({ name }, i): SheetText => {
      const [dx, dy] = [places[i]!.x - centre.x, places[i]!.y - centre.y];
      const long = Math.hypot(dx, dy);
      const place = { x: places[i]!.x - (6 * dx) / long, y: places[i]!.y - (6 * dy) / long };
      return { ...said(name, place.x, place.y - lettering.title, "center"), height: lettering.title };
    }),
  };
}

/** An arc counter-clockwise between two directions, radians, less than half a circle. */
function arcFrom(centre: Point, radius: number, from: number, to: number): Path {
  const at = (angle: number) => ({
    x: centre.x + radius * Math.cos(angle),
    y: centre.y + radius * Math.sin(angle),
  });
  return {
    closed: false,
    points: [
      { ...at(from), bulge: Math.tan((to - from) / 4) },
      { ...at(to), bulge: 0 },
    ],
  };
}

/** Each inner string's range between its two tilts, on its treble side, with the angle over it at the end of a thin line. */
function rangesOf({ strings }: BowAnglesPlotInput, places: readonly Point[], side: 1 | -1): Marks {
  const inner = strings.flatMap(({ name, range }, i) => {
    if (range === null) return [];
    const [low, high] = [-range.tilt.treble, -range.tilt.bass].map((tilt) => (tilt * Math.PI) / 180);
    const [from, to] = side === 1 ? [low!, high!] : [Math.PI - high!, Math.PI - low!];
    const { x, y } = places[i]!;
    const middle = (from + to) / 2;
    const tip = { x: x + 0.7 * long * Math.cos(middle), y: y + 0.7 * long * Math.sin(middle) };
    const arc = arcFrom(places[i]!, long, from, to);
    const wedge = { closed: true, points: [...arc.points, { x, y, bulge: 0 }] };
    return [{ arc, wedge, tip, words: `${name} ${degrees(range.angle)}` }];
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
