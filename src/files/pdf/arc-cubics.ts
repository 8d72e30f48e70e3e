import type { Point } from "../../geometry/point.ts";
import type { Arc } from "../../geometry/segment.ts";

/** How far a cubic may stray from the arc that it stands for, mm: half of what a drawing's file may. */
const stray = 0.001;

/** A cubic from where the one before it ended: its two handles and its end, mm. */
export type Cubic = readonly [Point, Point, Point];

/**
 * An arc as cubics, which is all that a PDF has, as few even ones as keep within 0.001 mm of it.
 *
 * Handles at 4/3 tan(sweep/4) of the radius along the tangents, which touches the arc at its ends and its middle; it strays by at most
 * 4/27 sin⁶(sweep/4) / cos²(sweep/4) of the radius.
 */
export function arcCubics({ centre, radius, start, sweep, to }: Arc): Cubic[] {
  let count = Math.max(1, Math.ceil(Math.abs(sweep) / (Math.PI / 2)));
  while (strayOf(radius, sweep / count) > stray) count++;
  const piece = sweep / count;
  const reach = (4 / 3) * Math.tan(piece / 4) * radius;
  const on = (angle: number) => ({
    x: centre.x + radius * Math.cos(angle),
    y: centre.y + radius * Math.sin(angle),
  });
  return Array.from({ length: count }, (_, i): Cubic => {
    const [a, b] = [start + piece * i, start + piece * (i + 1)];
    const [p, q] = [on(a), i === count - 1 ? to : on(b)];
    return [
      { x: p.x - reach * Math.sin(a), y: p.y + reach * Math.cos(a) },
      { x: q.x + reach * Math.sin(b), y: q.y - reach * Math.cos(b) },
      q,
    ];
  });
}

function strayOf(radius: number, sweep: number): number {
  const quarter = sweep / 4;
  return ((4 / 27) * radius * Math.sin(quarter) ** 6) / Math.cos(quarter) ** 2;
}
