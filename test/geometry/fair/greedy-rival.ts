import type { FairSpan } from "../../../src/geometry/fair/fair-span.ts";
import { spanAt } from "../../../src/geometry/fair/span-at.ts";

type Place = ReturnType<typeof spanAt>;

/** Places to a piece of the span: the rival may end a biarc at any of them. */
const FINE = 80;

/**
 * How many arcs a greedy fit needs: from where it stands, the longest biarc of equal tangents, tangent to the curve at
 * both ends, that stays within the tolerance (mm) of all fine places. Shares nothing with the fit that it is the rival of.
 */
export function greedyArcs(span: FairSpan, tolerance: number): number {
  const places: Place[] = [];
  for (let piece = 0; piece < span.steps.length; piece++) {
    for (let i = 0; i < FINE; i++) places.push(spanAt(span, piece, i / FINE));
  }
  places.push(spanAt(span, span.steps.length - 1, 1));
  let biarcs = 0;
  for (let at = 0; at < places.length - 1; biarcs++) {
    let to = Math.min(places.length - 1, at + 5 * FINE);
    while (to > at + 1 && !fits(places, at, to, tolerance)) to--;
    at = to;
  }
  return 2 * biarcs;
}

function fits(places: readonly Place[], from: number, to: number, tolerance: number): boolean {
  const a = places[from]!;
  const b = places[to]!;
  const [vx, vy] = [b.x - a.x, b.y - a.y];
  const open = 2 * (1 - a.tx * b.tx - a.ty * b.ty);
  const along = vx * (a.tx + b.tx) + vy * (a.ty + b.ty);
  const square = vx * vx + vy * vy;
  const d = open < 1e-14 ? square / (2 * along) : (Math.sqrt(along * along + open * square) - along) / open;
  if (!(d > 0)) return false;
  const joint = { x: (a.x + b.x + d * (a.tx - b.tx)) / 2, y: (a.y + b.y + d * (a.ty - b.ty)) / 2 };
  const across = { x: vx - d * (a.tx + b.tx), y: vy - d * (a.ty + b.ty) };
  const [first, second] = [circle(a, joint), circle(b, joint)];
  for (let i = from + 1; i < to; i++) {
    const p = places[i]!;
    const { x, y, radius } = (p.x - joint.x) * across.x + (p.y - joint.y) * across.y < 0 ? first : second;
    if (!(Math.abs(Math.hypot(p.x - x, p.y - y) - radius) <= tolerance)) return false;
  }
  return true;
}

/** The circle through a place along its direction and through another place. */
function circle(at: Place, through: { x: number; y: number }): { x: number; y: number; radius: number } {
  const [ex, ey] = [through.x - at.x, through.y - at.y];
  const radius = (ex * ex + ey * ey) / (2 * (at.tx * ey - at.ty * ex));
  return { x: at.x - at.ty * radius, y: at.y + at.tx * radius, radius: Math.abs(radius) };
}
