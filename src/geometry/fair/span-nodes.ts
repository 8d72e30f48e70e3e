import type { FairSpan } from "./fair-span.ts";
import { spanAt } from "./span-at.ts";

/**
 * Places along a span, in order of travel, as columns: `at` (piece + share of its parameter), mm, and unit direction.
 *
 * An arc may end at the even places; the odd ones are there to be looked at. `lean` is how far (radians,
 * counter-clockwise) the tangent of a well-placed arc stands from the curve's. `pinned` marks where an arc must end: at
 * the ends and the named stations, all even. A closed span's first place stands at the end once more.
 */
export type SpanNodes = {
  readonly count: number;
  readonly at: Float64Array;
  readonly x: Float64Array;
  readonly y: Float64Array;
  readonly tx: Float64Array;
  readonly ty: Float64Array;
  readonly lean: Float64Array;
  readonly pinned: Uint8Array;
};

/** Looks taken at each piece of a span to see how its curvature runs. */
const LOOKS = 16;
/** Places to one arc of the length that curvature and tolerance allow. */
const PER_ARC = 16;
/** Least places to one piece, and to one radian of turning, where curvature hardly changes. */
const PER_PIECE = 8;
const PER_RADIAN = 16;
/** Most places to one look, which only the neighbourhood of a cusp asks for. */
const MOST = 64;
/** An arc reaches (this × tolerance / change of curvature)^(1/3). */
const REACH = 72 * Math.sqrt(3);

/**
 * Spreads places over a span so that every arc of the arc spline gets about as many; `density` multiplies them.
 *
 * Where curvature changes at the rate c (1/mm²), tangent arcs of equal length L that share their error evenly stray by
 * c L³ / (72 √3): they cross the curve at their ends and in their middle, and stand at their ends by c L² / 12 from its
 * direction. (Biarcs held to the curve's own direction at their ends stray three times as far for the same arcs.)
 */
export function spanNodes(span: FairSpan, tolerance: number, density: number): SpanNodes {
  const looks = span.steps.length * LOOKS;
  const weight = new Float64Array(looks);
  const change = new Float64Array(looks);
  for (let look = 0; look < looks; look++) {
    const piece = Math.floor(look / LOOKS);
    const before = spanAt(span, piece, look / LOOKS - piece);
    const place = spanAt(span, piece, (look + 1) / LOOKS - piece);
    const run = Math.hypot(place.x - before.x, place.y - before.y);
    const turn = Math.abs(before.tx * place.ty - before.ty * place.tx);
    const rate = run > 0 ? (place.curvature - before.curvature) / run : 0;
    const arcs = run * Math.cbrt(Math.abs(rate) / (REACH * tolerance));
    change[look] = rate;
    weight[look] = density * Math.min(MOST, Math.max(arcs * PER_ARC, turn * PER_RADIAN, PER_PIECE / LOOKS));
  }
  const at: number[] = [];
  const pins: number[] = [];
  for (let piece = 0, from = 0; piece < span.steps.length; piece++) {
    const last = piece === span.steps.length - 1;
    if (!last && span.stations[piece + 1]!.id === undefined) continue;
    pins.push(at.length);
    spread(weight, from, (piece + 1) * LOOKS, at);
    from = (piece + 1) * LOOKS;
  }
  pins.push(at.length);
  at.push(looks);
  return columns(span, at, pins, change, tolerance);
}

/** Adds places between two looks, the first of them included, so that equal weight lies between them. */
function spread(weight: Float64Array, from: number, to: number, at: number[]): void {
  let total = 0;
  for (let i = from; i < to; i++) total += weight[i]!;
  const count = Math.max(4, 2 * Math.ceil(total / 2));
  let i = from;
  let sum = 0;
  at.push(from);
  for (let k = 1; k < count; k++) {
    const wanted = (k * total) / count;
    while (i < to - 1 && sum + weight[i]! < wanted) sum += weight[i++]!;
    at.push(i + (wanted - sum) / weight[i]!);
  }
}

function columns(
  span: FairSpan,
  looks: readonly number[],
  pins: readonly number[],
  change: Float64Array,
  tolerance: number,
): SpanNodes {
  const count = looks.length;
  const column = () => new Float64Array(count);
  const pinned = new Uint8Array(count);
  for (const pin of pins) pinned[pin] = 1;
  const nodes = {
    count,
    at: column(),
    x: column(),
    y: column(),
    tx: column(),
    ty: column(),
    lean: column(),
    pinned,
  };
  for (let i = 0; i < count; i++) {
    nodes.at[i] = looks[i]! / LOOKS;
    const piece = Math.min(Math.floor(nodes.at[i]!), span.steps.length - 1);
    const place = spanAt(span, piece, nodes.at[i]! - piece);
    nodes.x[i] = place.x;
    nodes.y[i] = place.y;
    nodes.tx[i] = place.tx;
    nodes.ty[i] = place.ty;
    nodes.lean[i] = leanAt(change, looks[i]!, span.closed, tolerance);
  }
  return nodes;
}

/** The lean at a place, the change of curvature taken as the mean of a few looks on both sides. */
function leanAt(change: Float64Array, look: number, closed: boolean, tolerance: number): number {
  const looks = change.length;
  const middle = Math.round(look);
  let sum = 0;
  let count = 0;
  for (let i = middle - 2; i < middle + 2; i++) {
    if (!closed && (i < 0 || i >= looks)) continue;
    sum += change[(i + looks) % looks]!;
    count++;
  }
  return (-Math.cbrt(sum / count) * (REACH * tolerance) ** (2 / 3)) / 12;
}
