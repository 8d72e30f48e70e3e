import type { Path } from "../path.ts";
import type { Point } from "../point.ts";
import { areaMoments } from "./area-moments.ts";

/** The centroid of an area, or that there is no area. */
export type Centroid = { readonly kind: "ok"; readonly point: Point } | { readonly kind: "no-area" };

/**
 * The centroid of the area inside a path, mm; exact for arcs, the same for both windings.
 *
 * An open path is measured as if a line closed it. `no-area` where the area is exactly nothing or not a number.
 */
export function centroid(path: Path): Centroid {
  const { area, x, y } = areaMoments(path);
  if (area === 0 || !Number.isFinite(area)) return { kind: "no-area" };
  return { kind: "ok", point: { x: x / area, y: y / area } };
}
