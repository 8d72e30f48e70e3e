import Flatbush from "flatbush";
import { tolerance } from "../tolerance.ts";
import { polygonArea, sharedPolygon } from "./shared-polygon.ts";
import type { TriangleMesh } from "./triangle-mesh.ts";
import { type Triangle, trianglesIn } from "./triangles-in.ts";
import { between, dot } from "./vec3.ts";

/** Faces look at each other if their normals are opposed to within half a degree. */
const OPPOSED = -Math.cos(Math.PI / 360);

/**
 * The area (mm²) over which two meshes touch: where a triangle of one lies flat on one of the other, facing it, within
 * `tolerance.contact`. Exact for flat faces, and for curved ones that were faceted alike.
 */
export function contactArea(first: TriangleMesh, second: TriangleMesh): number {
  const [ours, theirs] = [trianglesIn(first), trianglesIn(second)];
  if (ours.length === 0 || theirs.length === 0) return 0;
  const index = new Flatbush(theirs.length);
  for (const { a, b, c } of theirs) {
    index.add(
      Math.min(a.x, b.x, c.x),
      Math.min(a.y, b.y, c.y),
      Math.max(a.x, b.x, c.x),
      Math.max(a.y, b.y, c.y),
    );
  }
  index.finish();
  const slack = tolerance.contact;
  let area = 0;
  for (const triangle of ours) {
    const { a, b, c } = triangle;
    const [lowX, highX] = [Math.min(a.x, b.x, c.x) - slack, Math.max(a.x, b.x, c.x) + slack];
    const [lowY, highY] = [Math.min(a.y, b.y, c.y) - slack, Math.max(a.y, b.y, c.y) + slack];
    for (const j of index.search(lowX, lowY, highX, highY)) area += sharedArea(triangle, theirs[j]!);
  }
  return area;
}

/** The area that two triangles share, seen along the first one's normal, if they lie flat on each other. */
function sharedArea(first: Triangle, second: Triangle): number {
  if (dot(first.normal, second.normal) > OPPOSED) return 0;
  const { a, normal } = first;
  const corners = [second.a, second.b, second.c];
  if (corners.some((p) => Math.abs(dot(between(a, p), normal)) > tolerance.contact)) return 0;
  return polygonArea(sharedPolygon(first, second).corners);
}
