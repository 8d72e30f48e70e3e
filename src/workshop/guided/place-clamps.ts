import { facet } from "../../geometry/facet.ts";
import type { Path } from "../../geometry/path.ts";
import { pointOn } from "../../geometry/path-measures/segment-places.ts";
import type { Point } from "../../geometry/point.ts";
import { segmentLength, segmentsOf } from "../../geometry/segment.ts";
import type { Shop } from "../../order/shop.ts";
import { type BaseFrame, boxOnBase, onBase } from "./base-frame.ts";
import { type HoldingInput, sweptMargin } from "./holding.ts";

/** A clamp on a fixture's base: its footprint, its arm with the pad, and where the pad presses; mm. */
export type PlacedClamp = {
  readonly id: string;
  readonly base: Path;
  readonly arm: Path;
  readonly pad: Point;
};

type Clamp = Shop["clamps"][number];

/** How far apart places are tried, and how closely an outline is looked at, mm. */
const grid = 10;
const looks = 5;

/** The room kept behind the batten and between two clamps, mm. */
export const clampsBehind = 4;

/** Half the width of a clamp's arm with its pad, and how far the pad's middle stands inside the work at least, mm (G: default, confirm). */
export const clampPad = { half: 12, inside: 15 } as const;

/**
 * Clamps behind the batten with their arms over the work, as far apart as they go, of the first kind that is there often enough and
 * fits so often; else as many as fit of the kind that fits most often. Each stands square to the joined edge, its pad as far over the work as it
 * goes; everything of it is farther from the finished edges, and from where they are led on, than the margin: what the cutter
 * sweeps lies beyond those. A hand-held router's base sweeps more.
 */
export function placeClamps(
  { frame, length, led, clamps, past }: Pick<HoldingInput, "frame" | "length" | "led" | "clamps" | "past">,
  behind: number,
  wanted: number,
): PlacedClamp[] {
  const edges = chordsOf(led);
  let most: PlacedClamp[] = [];
  for (const clamp of clamps) {
    const ways = places(length).flatMap((s) => {
      const placed = deepestAt(frame, s, behind + clampsBehind, clamp, edges, past);
      return placed === undefined ? [] : [{ s, placed }];
    });
    const width = Math.min(...clamp.base);
    const chosen = spread(
      ways.map(({ s }) => s),
      Math.min(wanted, clamp.count),
      width + clampsBehind,
    );
    const found = chosen.map((s) => ways.find((way) => way.s === s)!.placed);
    if (found.length > most.length) most = found;
    if (found.length === wanted) return found;
  }
  return most;
}

function places(length: number): number[] {
  const count = Math.max(1, Math.floor(length / grid));
  return Array.from({ length: count }, (_, i) => (length * (i + 0.5)) / count);
}

/** The clamp at a place with its pad as far over the work as it goes; nothing where it goes nowhere. */
function deepestAt(
  frame: BaseFrame,
  s: number,
  least: number,
  { id, base, reach }: Clamp,
  edges: readonly Chord[],
  past: number,
): PlacedClamp | undefined {
  const half = Math.min(...base) / 2;
  for (let front = least; front <= reach - clampPad.inside; front += grid / 2) {
    const footprint = boxOnBase(frame, s - half, front, s + half, front + Math.max(...base));
    const over = front - reach;
    const arm = boxOnBase(frame, s - clampPad.half, over - clampPad.half, s + clampPad.half, front);
    if (isClear(arm, edges, past) && isClear(footprint, edges, past))
      return { id, base: footprint, arm, pad: onBase(frame, s, over) };
  }
  return undefined;
}

/** A straight piece of the led edges. */
type Chord = { readonly from: Point; readonly dx: number; readonly dy: number; readonly square: number };

/** How far chords stray from the led edges, mm; what is asked of an outline is asked for so much more. */
const chord = 0.05;

function chordsOf(led: Path): Chord[] {
  const { points } = facet(led, chord);
  return points.slice(1).flatMap((to, i): Chord[] => {
    const from = points[i]!;
    const [dx, dy] = [to.x - from.x, to.y - from.y];
    const square = dx * dx + dy * dy;
    return square > 0 ? [{ from, dx, dy, square }] : [];
  });
}

function isNearer({ x, y }: Point, { from, dx, dy, square }: Chord, least: number): boolean {
  const [px, py] = [x - from.x, y - from.y];
  const share = Math.min(1, Math.max(0, (px * dx + py * dy) / square));
  return (px - share * dx) ** 2 + (py - share * dy) ** 2 < least * least;
}

/** Whether an outline is farther from some edges than the margin everywhere: between two looks it is nearer by half their distance at most. */
function isClear(outline: Path, edges: readonly Chord[], past: number): boolean {
  const least = sweptMargin + past + looks / 2 + chord;
  return segmentsOf(outline).every((side) => {
    const count = Math.ceil(segmentLength(side) / looks);
    return Array.from({ length: count }, (_, i) => pointOn(side, i / count)).every((place) =>
      edges.every((edge) => !isNearer(place, edge, least)),
    );
  });
}

/** Up to so many of some places in order, the outermost first, evenly between them, none nearer to another than `apart`. */
function spread(all: readonly number[], count: number, apart: number): number[] {
  if (all.length === 0 || count === 0) return [];
  const [first, last] = [all[0]!, all.at(-1)!];
  for (let n = count; n > 1; n--) {
    const ideal = Array.from({ length: n }, (_, i) => first + ((last - first) * i) / (n - 1));
    const found = ideal.map((s) =>
      all.reduce((best, one) => (Math.abs(one - s) < Math.abs(best - s) ? one : best)),
    );
    if (found.every((s, i) => i === 0 || s - found[i - 1]! >= apart)) return found;
  }
  return [all[Math.floor((all.length - 1) / 2)]!];
}
