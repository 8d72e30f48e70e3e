import type { Extents } from "../../geometry/measure.ts";
import type { Path } from "../../geometry/path.ts";
import { distancesTo } from "../../geometry/path-measures/distances-to.ts";
import type { Point } from "../../geometry/point.ts";
import { segmentsOf } from "../../geometry/segment.ts";
import { windingsOf } from "../../geometry/winding-at.ts";

/** A blank, the wood that is kept of it, every cut through it, and the blade's kerf; mm. */
export type WastePinsInput = {
  readonly blank: Extents;
  readonly kept: Path;
  readonly cuts: readonly Path[];
  readonly kerf: number;
};

/** Two index pins of unequal size in the waste, the one nearer to the head first, mm; `none` where the waste is too narrow for two. */
export type WastePins =
  | { readonly kind: "ok"; readonly pins: readonly [WastePin, WastePin] }
  | { readonly kind: "none" };

/** An index pin's hole: its middle and its diameter, mm. */
export type WastePin = { readonly at: Point; readonly diameter: number };

/** The pins' diameters, the wood round a hole, and how far from a corner a place is looked for and in what steps, mm (G: default, confirm). */
const sizes = { pins: [6, 8], wall: 3, reach: 60, pace: 3 } as const;

/**
 * Places for two index pins in the waste, as far apart as the corners of the blank have room: a template or a drawing goes on one way only, and a
 * hole that is bored right through carries it to the other face.
 */
export function wastePins(given: WastePinsInput): WastePins {
  const isClear = clearIn(given);
  const { minX, maxX, minY, maxY } = given.blank;
  const corners = [
    { x: minX, y: minY, right: 1, up: 1 },
    { x: maxX, y: minY, right: -1, up: 1 },
    { x: maxX, y: maxY, right: -1, up: -1 },
    { x: minX, y: maxY, right: 1, up: -1 },
  ];
  const places = corners.flatMap((corner) => {
    const place = nearCorner(corner, isClear);
    return place === undefined ? [] : [place];
  });
  const pairs = places.flatMap((a, i) => places.slice(i + 1).map((b) => [a, b] as const));
  const apart = ([a, b]: readonly [Point, Point]) => Math.hypot(a.x - b.x, a.y - b.y);
  const best = pairs.reduce<readonly [Point, Point] | undefined>(
    (most, pair) => (most === undefined || apart(pair) > apart(most) + 1e-6 ? pair : most),
    undefined,
  );
  if (best === undefined || apart(best) < sizes.reach) return { kind: "none" };
  const [head, tail] = best[0].x <= best[1].x ? best : [best[1], best[0]];
  return {
    kind: "ok",
    pins: [
      { at: head, diameter: sizes.pins[0] },
      { at: tail, diameter: sizes.pins[1] },
    ],
  };
}

/** Whether the larger pin has wood round it at a place: in the blank, off every cut, outside what is kept. */
function clearIn({ blank, kept, cuts, kerf }: WastePinsInput): (at: Point) => boolean {
  const round = sizes.pins[1] / 2 + sizes.wall;
  const [toKept, inKept] = [distancesTo(segmentsOf(kept)), windingsOf([kept])];
  const toCuts = distancesTo(cuts.flatMap(segmentsOf));
  const inBlank = ({ x, y }: Point) =>
    Math.min(x - blank.minX, blank.maxX - x, y - blank.minY, blank.maxY - y) >= round - 1e-9;
  return (at) => inBlank(at) && inKept(at) === 0 && toKept(at) >= round && toCuts(at) >= round + kerf / 2;
}

/** The clear place that lies nearest to a corner of the blank. */
function nearCorner(
  { x, y, right, up }: Point & { readonly right: number; readonly up: number },
  isClear: (at: Point) => boolean,
): Point | undefined {
  const first = sizes.pins[1] / 2 + sizes.wall;
  const count = Math.floor((sizes.reach - first) / sizes.pace);
  const steps = Array.from({ length: count + 1 }, (_, i) => first + i * sizes.pace);
  return steps
    .flatMap((along) => steps.map((across) => ({ along, across })))
    .sort((a, b) => a.along + a.across - b.along - b.across || a.along - b.along)
    .map(({ along, across }) => ({ x: x + right * along, y: y + up * across }))
    .find(isClear);
}
