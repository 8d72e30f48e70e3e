import type { FairSpan } from "./fair-span.ts";

/** A place on a span: mm, unit direction of travel, and curvature (1/mm, positive turning counter-clockwise). */
export type SpanPlace = {
  readonly x: number;
  readonly y: number;
  readonly tx: number;
  readonly ty: number;
  readonly curvature: number;
};

/**
 * The place on piece `piece` of a span at `t` from 0 (its start) to 1 (its end).
 *
 * Where the curve stands still (a cusp, which only wild stations make) the direction is that of the chord and the
 * curvature 0.
 */
export function spanAt(span: FairSpan, piece: number, t: number): SpanPlace {
  const next = (piece + 1) % span.stations.length;
  const [p, q] = [span.stations[piece]!, span.stations[next]!];
  const [m, n] = [span.slopes[piece]!, span.slopes[next]!];
  const h = span.steps[piece]!;
  const s = 1 - t;
  const [h0, h1, k0, k1] = [s * s * (1 + 2 * t), t * t * (3 - 2 * t), h * t * s * s, -h * t * t * s];
  const x = h0 * p.x + h1 * q.x + k0 * m.x + k1 * n.x;
  const y = h0 * p.y + h1 * q.y + k0 * m.y + k1 * n.y;
  const [a, b, c] = [(6 * t * s) / h, s * (1 - 3 * t), t * (3 * t - 2)];
  const vx = a * (q.x - p.x) + b * m.x + c * n.x;
  const vy = a * (q.y - p.y) + b * m.y + c * n.y;
  const [d, e, f] = [(6 - 12 * t) / (h * h), (6 * t - 4) / h, (6 * t - 2) / h];
  const ax = d * (q.x - p.x) + e * m.x + f * n.x;
  const ay = d * (q.y - p.y) + e * m.y + f * n.y;
  const speed = Math.hypot(vx, vy);
  if (speed === 0) {
    const chord = Math.hypot(q.x - p.x, q.y - p.y);
    return { x, y, tx: (q.x - p.x) / chord, ty: (q.y - p.y) / chord, curvature: 0 };
  }
  return { x, y, tx: vx / speed, ty: vy / speed, curvature: (vx * ay - vy * ax) / speed ** 3 };
}
