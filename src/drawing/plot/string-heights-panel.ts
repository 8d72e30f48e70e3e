import type { Point } from "../../geometry/point.ts";
import { hatched } from "../sheet/hatch.ts";
import { lettering, textLength } from "../sheet/lettering.ts";
import type { Marks, SheetText } from "../sheet/sheet.ts";
import { polyline, stroke } from "../sheet/strokes.ts";
import { type Axis, placeOn } from "./axis.ts";
import { numberText } from "./number-text.ts";
import { said } from "./plot-paper.ts";

/** A string's underside at nut, board's end and bridge, and the board's surface at even stations from nut to end; mm. */
export type HeightsOfString = {
  readonly name: string;
  readonly nut: number;
  readonly end: number;
  readonly bridge: number;
  readonly surface: readonly number[];
};

/** What all strings share: string length, board's length, frets; mm. */
export type HeightsAlong = {
  readonly stringLength: number;
  readonly boardLength: number;
  readonly frets: { readonly places: readonly number[]; readonly crown: number } | null;
};

const hatching = 2;

/** A gap that is written at a place along the string: the number and how its text stands to the place. */
type Gap = { readonly x: number; readonly gap: number; readonly align: SheetText["align"] };

/** One string over the board: the board's surface with its frets, the string's underside, and the gaps in numbers. */
export function heightsPanel(string: HeightsOfString, of: HeightsAlong, along: Axis, up: Axis): Marks {
  const { stringLength, boardLength, frets } = of;
  const { name, nut, bridge, surface } = string;
  const at = (x: number, z: number): Point => ({ x: placeOn(along, x), y: placeOn(up, z) });
  const height = (x: number) => nut + ((bridge - nut) * x) / stringLength;
  const top = surface.map((z, k) => at((boardLength * k) / (surface.length - 1), z));
  const under = polyline([...top, at(boardLength, up.from), at(0, up.from)]);
  const crown = frets?.crown ?? 0;
  const middle = boardLength / 2;
  const hollow = surfaceAt(surface, 0.5);
  const gaps: readonly Gap[] = [
    { x: 0, gap: nut - crown, align: "left" },
    { x: middle, gap: height(middle) - hollow - crown, align: "center" },
    { x: boardLength, gap: string.end - crown, align: "right" },
    { x: stringLength, gap: bridge, align: "right" },
  ];
  return {
    lines: [
      ...hatched([{ ...under, closed: true }], hatching),
      { weight: "outline", path: polyline(top) },
      stroke("outline", at(boardLength, surface.at(-1)!), at(boardLength, up.from)),
      stroke("dimension", at(0, 0), at(boardLength, 0)),
      stroke("hidden", at(boardLength, 0), at(stringLength, 0)),
      stroke("curve", at(0, nut), at(stringLength, bridge)),
      ...fretLines(string, of, at),
      stroke("extension", at(middle, hollow + crown), at(middle, height(middle))),
      stroke("extension", at(boardLength, surface.at(-1)! + crown), at(boardLength, string.end)),
      stroke("extension", at(stringLength, 0), at(stringLength, bridge)),
    ],
    texts: [
      ...gaps.map((gap) => gapText(gap, along, (x) => placeOn(up, height(x)))),
      {
        ...said(`${name}   HOLLOW ${numberText(-hollow, 2)}`, along.start + 3, up.end + 2),
        height: lettering.title,
      },
    ],
  };
}

/** The surface's height at a share of the board's length, straight between its stations. */
function surfaceAt(surface: readonly number[], share: number): number {
  const place = share * (surface.length - 1);
  const before = Math.min(Math.floor(place), surface.length - 2);
  return surface[before]! + (surface[before + 1]! - surface[before]!) * (place - before);
}

function fretLines(
  { surface }: HeightsOfString,
  { frets, boardLength }: HeightsAlong,
  at: (x: number, z: number) => Point,
) {
  if (frets === null) return [];
  return frets.places.map((x) => {
    const z = surfaceAt(surface, x / boardLength);
    return stroke("edge", at(x, z), at(x, z + frets.crown));
  });
}

/** A gap's number over the string, clear of it along its whole length. */
function gapText({ x, gap, align }: Gap, along: Axis, stringAt: (x: number) => number): SheetText {
  const text = numberText(gap, 2);
  const long = textLength({ text, height: lettering.height });
  const place = placeOn(along, x) + { left: 1, center: 0, right: 0 }[align];
  const start = place - { left: 0, center: long / 2, right: long }[align];
  const value = (paper: number) =>
    along.from + ((paper - along.start) * (along.to - along.from)) / (along.end - along.start);
  const clear = Math.max(stringAt(value(start)), stringAt(value(start + long))) + 1.4;
  return said(text, place, clear, align);
}
