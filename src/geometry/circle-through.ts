import type { Point } from "./point.ts";

/** The circle through three places, or that they lie on one line (two of them at the same place included). */
export type CircleThrough =
  | { readonly kind: "ok"; readonly centre: Point; readonly radius: number }
  | { readonly kind: "collinear" };

/**
 * The circle through three places, mm, by the crossing of two chords' middle normals. `collinear` when its radius would be
 * more than a billion times as large as the places are apart.
 */
export function circleThrough(a: Point, b: Point, c: Point): CircleThrough {
  const [bx, by, cx, cy] = [b.x - a.x, b.y - a.y, c.x - a.x, c.y - a.y];
  const twice = 2 * (bx * cy - by * cx);
  const [bb, cc] = [bx * bx + by * by, cx * cx + cy * cy];
  if (!(Math.abs(twice) > 1e-9 * Math.max(bb, cc))) return { kind: "collinear" };
  const [x, y] = [(cy * bb - by * cc) / twice, (bx * cc - cx * bb) / twice];
  return { kind: "ok", centre: { x: a.x + x, y: a.y + y }, radius: Math.hypot(x, y) };
}
