import type { Edge } from "../arrangement/edge.ts";
import { tolerance } from "../tolerance.ts";
import { meetCarriers } from "./carriers.ts";
import { middleOf } from "./middle.ts";
import { placeOn, within } from "./on-edge.ts";

/**
 * What two edges have in common: the points x, y, x, y … (mm), and whether they run along one another between the first
 * and the last of them. An end of one edge on the other counts before any worked-out crossing, so that edges joined end
 * to end, tangent or not, have their join in common and nothing beside it.
 */
export type Meeting = { readonly points: readonly number[]; readonly overlap: boolean };

/** Edges that have nothing in common. */
export const apart: Meeting = { points: [], overlap: false };

/** What two edges have in common. */
export function meetEdges(a: Edge, b: Edge): Meeting {
  const { snap } = tolerance;
  if (a.minX > b.maxX + snap || b.minX > a.maxX + snap || a.minY > b.maxY + snap || b.minY > a.maxY + snap)
    return apart;
  const ends = endsInCommon(a, b);
  if (ends.length === 0) {
    const roots = rootsWithin(a, b, meetCarriers(a, b));
    return roots.length === 0 ? apart : { points: roots, overlap: false };
  }
  if (ends.length > 2) {
    const [x, y] = middleOf(a, ends);
    if (placeOn(b, x, y) !== "off") return { points: ends, overlap: true };
  }
  if (a.turn === 0 && b.turn === 0) return { points: ends, overlap: false };
  const more = rootsWithin(a, b, strangers(meetCarriers(a, b), ends));
  return { points: more.length === 0 ? ends : [...ends, ...more], overlap: false };
}

/** The ends of either edge that lie on the other, each place once. */
function endsInCommon(a: Edge, b: Edge): number[] {
  const found: number[] = [];
  const [onStart, onEnd] = [placeOn(b, a.ax, a.ay), placeOn(b, a.bx, a.by)];
  if (onStart !== "off") found.push(a.ax, a.ay);
  if (onEnd !== "off") found.push(a.bx, a.by);
  if (onStart !== "start" && onEnd !== "start" && placeOn(a, b.ax, b.ay) !== "off") found.push(b.ax, b.ay);
  if (onStart !== "end" && onEnd !== "end" && placeOn(a, b.bx, b.by) !== "off") found.push(b.bx, b.by);
  return found;
}

/** Those of the worked-out points that lie on both edges. */
function rootsWithin(a: Edge, b: Edge, roots: readonly number[]): number[] {
  const kept: number[] = [];
  for (let k = 0; k < roots.length; k += 2) {
    const x = roots[k]!;
    const y = roots[k + 1]!;
    if (within(a, x, y) && within(b, x, y)) kept.push(x, y);
  }
  return kept;
}

/**
 * The crossings that no common end stands for: each end stands for the crossing nearest to it. A single one is a touch,
 * and then the end is the touch.
 */
function strangers(roots: readonly number[], ends: readonly number[]): number[] {
  if (roots.length < 4) return [];
  let [first, second] = [true, true];
  for (let k = 0; k < ends.length; k += 2) {
    const toFirst = (ends[k]! - roots[0]!) ** 2 + (ends[k + 1]! - roots[1]!) ** 2;
    const toSecond = (ends[k]! - roots[2]!) ** 2 + (ends[k + 1]! - roots[3]!) ** 2;
    if (toFirst <= toSecond) first = false;
    else second = false;
  }
  return [...(first ? [roots[0]!, roots[1]!] : []), ...(second ? [roots[2]!, roots[3]!] : [])];
}
