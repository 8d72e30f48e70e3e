import type { Path } from "../path.ts";
import { areaMoments } from "./area-moments.ts";

/** Integrals of x², xy and y² over an area, about its own centroid, mm⁴. */
export type SecondMoments = { readonly xx: number; readonly xy: number; readonly yy: number };

/**
 * The second moments of the area inside a path about its centroid, mm⁴: `yy` resists bending about an axis along x.
 *
 * Exact for arcs; positive whatever the winding. An open path is measured as if a line closed it. An area of nothing
 * gives zeros.
 */
export function secondMoments(path: Path): SecondMoments {
  const first = path.points[0] ?? { x: 0, y: 0 };
  const near = path.points.map((p) => ({ ...p, x: p.x - first.x, y: p.y - first.y }));
  const m = areaMoments({ closed: true, points: near });
  if (m.area === 0) return { xx: 0, xy: 0, yy: 0 };
  const sign = Math.sign(m.area);
  return {
    xx: sign * (m.xx - (m.x * m.x) / m.area),
    xy: sign * (m.xy - (m.x * m.y) / m.area),
    yy: sign * (m.yy - (m.y * m.y) / m.area),
  };
}
