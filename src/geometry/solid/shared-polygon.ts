import { cutPolygon } from "../cut-polygon.ts";
import type { Point } from "../point.ts";
import type { Triangle } from "./triangles-in.ts";
import { between, cross, dot, unit, type Vec3 } from "./vec3.ts";

/** The polygon that two triangles share, seen along the first one's normal, mm: in the plane of its first corner and of u and v. */
export type SharedPolygon = { readonly corners: readonly Point[]; readonly u: Vec3; readonly v: Vec3 };

/** What two triangles that face each other share, seen along the first one's normal; counter-clockwise, empty where they share nothing. */
export function sharedPolygon(first: Triangle, second: Triangle): SharedPolygon {
  const { a, b, c, normal } = first;
  const u = unit(between(a, b));
  const v = cross(normal, u);
  const flat = (p: Vec3): Point => ({ x: dot(between(a, p), u), y: dot(between(a, p), v) });
  const window = [a, b, c].map(flat);
  let corners = [second.a, second.b, second.c].map(flat).reverse();
  for (const [i, p] of window.entries()) corners = leftOf(corners, p, window[(i + 1) % 3]!);
  return { corners, u, v };
}

/** The area of a polygon, mm²: negative where it runs clockwise. */
export function polygonArea(corners: readonly Point[]): number {
  return corners.reduce((sum, p, i) => sum + corners.at(i - 1)!.x * p.y - p.x * corners.at(i - 1)!.y, 0) / 2;
}

/** The part of a polygon to the left of the line through p and q. */
function leftOf(corners: readonly Point[], p: Point, q: Point): Point[] {
  return cutPolygon(
    corners,
    (r) => (q.x - p.x) * (r.y - p.y) - (q.y - p.y) * (r.x - p.x),
    (a, b, share) => ({ x: a.x + share * (b.x - a.x), y: a.y + share * (b.y - a.y) }),
  );
}
