import { circle } from "../../geometry/circle.ts";
import { type Extents, extentsOf } from "../../geometry/measure.ts";
import type { Path } from "../../geometry/path.ts";
import type { Point } from "../../geometry/point.ts";
import { rectangle } from "../../geometry/rectangle.ts";
import type { Shop } from "../../order/shop.ts";
import { step } from "../../step/step.ts";
import { handDistances } from "../guided/hand-distances.ts";
import { type FixtureHole, holdingSizes, sweptMargin } from "../guided/holding.ts";
import type { PlacedClamp } from "../guided/place-clamps.ts";

/**
 * What the plates of a face are laid out from, mm: the guided edges of all their openings, how far a router's base reaches past them, whether hands hold
 * the plate, the shop's clamps.
 */
export type PlateLayoutInput = {
  readonly edges: readonly Path[];
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

/** A hold-down about every so many mm, and never fewer than two (S). */
const holdDownEvery = 300;

/**
 * A rectangle round all openings: along x farther than a router's base reaches by a strip for what holds, across as far as the base reaches; where
 * hands hold it, out to handholds at their distance.
 */
export const plateLayout = step("inside.layout", 1, (given: PlateLayoutInput): PlateLayout => {
  const { edges, past, held, clamps } = given;
  const box = extentsOf(edges)!;
  const { strip, hole, rim } = plateSizes;
  const grip = handDistances.usual + holdingSizes.hand + 1;
  const along = held ? grip + holdingSizes.hand + holdingSizes.rim : past + strip;
  const [minX, maxX] = [Math.floor(box.minX - along), Math.ceil(box.maxX + along)];
  const across = Math.max(past, rim);
  const [minY, maxY] = [Math.floor(box.minY - across), Math.ceil(box.maxY + across)];
  const wanted = Math.max(2, Math.ceil((maxX - minX) / holdDownEvery));
  const middle = (minY + maxY) / 2;
  const handholds = held
    ? [box.minX - grip, box.maxX + grip].map((x) => {
        const at = { x, y: middle };
        return { at, path: circle(at, holdingSizes.hand) };
      })
    : [];
  const holes: FixtureHole[] = [
    ...holdingSizes.pins.map((diameter, i) => {
      const at = i === 0 ? { x: minX + hole, y: minY + hole } : { x: maxX - hole, y: maxY - hole };
      return { at, diameter, what: `index pin ${diameter}` };
    }),
    ...handholds.map(({ at }) => ({ at, diameter: holdingSizes.bolt, what: "handhold" })),
    { at: { x: minX + hole, y: maxY - hole }, diameter: holdingSizes.hang, what: "hang hole" },
  ];
  return {
    ...{ plate: rectangle(minX, minY, maxX, maxY), handholds, holes, wanted },
    clamps: clampsAt(clamps, wanted, { ...box, minX: box.minX - past, maxX: box.maxX + past }),
  };
});

/** Clamps at both ends, pads beyond all that the base reaches, arms square to the ends and bases farther out; those of one kind that fit best. */
function clampsAt(clamps: Shop["clamps"], wanted: number, reached: Extents): readonly PlacedClamp[] {
  let best: readonly PlacedClamp[] = [];
  for (const clamp of clamps) {
    const { id, base, reach, count } = clamp;
    const width = Math.min(...base);
    if (reach < plateSizes.strip - plateSizes.pad + room || plateSizes.pad - armHalf < sweptMargin) continue;
    const most = Math.max(1, Math.floor((reached.maxY - reached.minY + 2 * plateSizes.rim) / (width + room)));
    const enough = Math.min(wanted, count, 2 * most);
    const [left, right] = [Math.ceil(enough / 2), Math.floor(enough / 2)];
    const middle = (reached.minY + reached.maxY) / 2;
    const at = (many: number, k: number) => middle + (k - (many - 1) / 2) * (width + room);
    const found = [
      ...Array.from({ length: left }, (_, k) => clampTo(id, clamp, -1, reached.minX, at(left, k))),
      ...Array.from({ length: right }, (_, k) => clampTo(id, clamp, 1, reached.maxX, at(right, k))),
    ];
    if (found.length > best.length) best = found;
    if (best.length === wanted) break;
  }
  return best;
}

/** One clamp with its pad beyond a line x = `from`, its arm and base outward of that; `way` is 1 to the right. */
function clampTo(
  id: string,
  { base, reach }: Shop["clamps"][number],
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
