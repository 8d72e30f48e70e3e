import { circle } from "../../geometry/circle.ts";
import { extentsOf } from "../../geometry/measure.ts";
import type { Path } from "../../geometry/path.ts";
import type { Point } from "../../geometry/point.ts";
import { rectangle } from "../../geometry/rectangle.ts";
import type { Shop } from "../../order/shop.ts";
import { step } from "../../step/step.ts";
import { handDistances } from "../guided/hand-distances.ts";
import { type FixtureHole, holdDownEvery } from "../guided/holding.ts";
import { holdingSizes } from "../guided/holding-sizes.ts";
import type { PlacedClamp } from "../guided/place-clamps.ts";

/**
 * What the plates of a face are laid out from, mm: the guided edges of all their openings, from where to where the work reaches across, how far a router's base reaches past them, whether hands hold
 * the plate, the shop's clamps.
 */
export type PlateLayoutInput = {
  readonly edges: readonly Path[];
  readonly work: { readonly low: number; readonly high: number };
  readonly past: number;
  readonly held: boolean;
  readonly clamps: Shop["clamps"];
};

/**
 * The plate of a face, mm: all plates of one face are alike outside, so that one after another finds the same pins and clamps. `clamps` has those that
 * fit of the `wanted` ones; their bases stand off the plate. `axis` is the scribed line that the part's own axis shows under, the ticks show each opening's middle.
 */
export type PlateLayout = {
  readonly plate: Path;
  readonly clamps: readonly PlacedClamp[];
  readonly wanted: number;
  readonly handholds: readonly { readonly at: Point; readonly path: Path }[];
  readonly holes: readonly FixtureHole[];
};

/** How wide the strip at either end is that takes pins, clamps and the hang hole, how far holes stand from its edges and pads from its inner one, and the least rim of a plate, mm. */
export const plateSizes = { strip: 40, hole: 14, pad: 20, rim: 40 } as const;

/** Half the width of a clamp's arm with its pad, and the room between two clamps and behind a plate's edge, mm (G: default, confirm). */
const armHalf = 12;
const room = 4;

/**
 * A rectangle round all openings: along x farther than a router's base reaches by a strip for what holds, across as far as the base reaches; where
 * hands hold it, out to handholds at their distance.
 */
export const plateLayout = step("inside.layout", 1, (given: PlateLayoutInput): PlateLayout => {
  const { edges, work, past, held, clamps } = given;
  const box = extentsOf(edges)!;
  const { strip, hole, rim } = plateSizes;
  const grip = handDistances.usual + holdingSizes.hand + 1;
  const along = held ? grip + holdingSizes.hand + holdingSizes.rim : past + strip;
  const [minX, maxX] = [Math.floor(box.minX - along), Math.ceil(box.maxX + along)];
  const across = Math.max(past, rim);
  const [minY, maxY] = [Math.floor(box.minY - across), Math.ceil(box.maxY + across)];
  const wanted = Math.max(2, Math.ceil((maxX - minX) / holdDownEvery));
  const middle = (minY + maxY) / 2;
  const middleX = (minX + maxX) / 2;
  const handholds = held
    ? [box.minX - grip, box.maxX + grip].map((x) => {
        const at = { x, y: middle };
        return { at, path: circle(at, holdingSizes.hand) };
      })
    : [];
  const lines = { left: box.minX - past, right: box.maxX + past, minY, maxY };
  // On a table plate and work lie on the bit's side: no clamp that stands beside them could move with them.
  const placed = held ? [] : clampsAt(clamps, wanted, lines, work);
  const [low, high] = [minY + hole, maxY - hole];
  // Each pin in the corner of its end that is farther from the clamps there: low at the left and high at the right where it makes no odds.
  const left = farther(
    low,
    high,
    rowsOf(placed, (x) => x < middleX),
  );
  const right = farther(
    high,
    low,
    rowsOf(placed, (x) => x > middleX),
  );
  const inward = left === low ? 2 * hole : -2 * hole;
  return {
    ...{ plate: rectangle(minX, minY, maxX, maxY), handholds, wanted, clamps: placed },
    holes: [
      ...holdingSizes.pins.map((diameter, i) => {
        const at = i === 0 ? { x: minX + hole, y: left } : { x: maxX - hole, y: right };
        return { at, diameter, what: `index pin ${diameter}` };
      }),
      ...handholds.map(({ at }) => ({ at, diameter: holdingSizes.bolt, what: "handhold" })),
      { at: { x: minX + hole, y: left + inward }, diameter: holdingSizes.hang, what: "hang hole" },
    ],
  };
});

/** The heights of the clamps' pads at an end. */
function rowsOf(clamps: readonly PlacedClamp[], isThere: (x: number) => boolean): number[] {
  return clamps.filter(({ pad }) => isThere(pad.x)).map(({ pad }) => pad.y);
}

/** The one of two heights that is farther from the nearest of some rows; the first where both are as far. */
function farther(first: number, second: number, rows: readonly number[]): number {
  const far = (y: number) => Math.min(...rows.map((row) => Math.abs(row - y)));
  return far(second) > far(first) + 1e-6 ? second : first;
}

/** Where clamps' pads stand beyond, at either end of a plate, and how far the plate reaches across. */
type Lines = {
  readonly left: number;
  readonly right: number;
  readonly minY: number;
  readonly maxY: number;
};

/**
 * Clamps at both ends, pads beyond all that the base reaches, arms square to the ends and bases farther out, beside the work, which may go on there: the left
 * end's from the top, the right end's from the bottom.
 */
function clampsAt(
  clamps: Shop["clamps"],
  wanted: number,
  lines: Lines,
  work: PlateLayoutInput["work"],
): readonly PlacedClamp[] {
  let best: readonly PlacedClamp[] = [];
  for (const clamp of clamps) {
    const { base, reach, count } = clamp;
    if (reach < plateSizes.strip - plateSizes.pad + room) continue;
    const rows = rowsFor(Math.min(...base) / 2, lines, work);
    const found = Array.from({ length: Math.min(wanted, count) }, (_, i) => i).flatMap((i) => {
      const left = i % 2 === 0;
      const y = (left ? rows : rows.toReversed())[Math.floor(i / 2)];
      return y === undefined ? [] : [clampTo(clamp, left ? -1 : 1, left ? lines.left : lines.right, y)];
    });
    if (found.length > best.length) best = found;
    if (best.length === wanted) break;
  }
  return best;
}

/** The heights beside the work at which a clamp of half a width may stand at an end, from the top: those where its pad is on the plate. */
function rowsFor(half: number, { minY, maxY }: Lines, { high, low }: PlateLayoutInput["work"]): number[] {
  const rows = [high + half + room, low - half - room];
  return rows.filter((y) => y + armHalf + room <= maxY && y - armHalf - room >= minY);
}

/** One clamp with its pad beyond a line x = `from`, its arm and base outward of that; `way` is 1 to the right. */
function clampTo(
  { id, base, reach }: Shop["clamps"][number],
  way: 1 | -1,
  from: number,
  y: number,
): PlacedClamp {
  const pad = { x: from + way * plateSizes.pad, y };
  const front = pad.x + way * reach;
  const [half, deep] = [Math.min(...base) / 2, Math.max(...base)];
  const box = (a: number, b: number, h: number) => rectangle(Math.min(a, b), y - h, Math.max(a, b), y + h);
  return {
    id,
    base: box(front, front + way * deep, half),
    arm: box(pad.x - way * armHalf, front, armHalf),
    pad,
  };
}
