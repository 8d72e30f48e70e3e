import Flatbush from "flatbush";
import type { Point } from "../point.ts";
import { tolerance } from "../tolerance.ts";
import type { TriangleMesh } from "./triangle-mesh.ts";
import { between, cross, dot, type Vec3 } from "./vec3.ts";

type Triangle = { readonly a: Vec3; readonly b: Vec3; readonly c: Vec3; readonly normal: Vec3 };

/** Faces look at each other if their normals are opposed to within half a degree. */
const OPPOSED = -Math.cos(Math.PI / 360);

/**
 * The area (mm²) over which two meshes touch: where a triangle of one lies flat on one of the other, facing it, within
 * `tolerance.contact`. Exact for flat faces, and for curved ones that were faceted alike.
 */
export function contactArea(first: TriangleMesh, second: TriangleMesh): number {
  const [ours, theirs] = [trianglesOf(first), trianglesOf(second)];
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

function trianglesOf({ positions, triangles }: TriangleMesh): Triangle[] {
  const corner = (i: number): Vec3 => {
    const at = 3 * triangles[i]!;
    return { x: positions[at]!, y: positions[at + 1]!, z: positions[at + 2]! };
  };
  const out: Triangle[] = [];
  for (let t = 0; t < triangles.length; t += 3) {
    const [a, b, c] = [corner(t), corner(t + 1), corner(t + 2)];
    const n = cross(between(a, b), between(a, c));
    const length = Math.sqrt(dot(n, n));
    if (length > 0) out.push({ a, b, c, normal: { x: n.x / length, y: n.y / length, z: n.z / length } });
  }
  return out;
}

/** The area that two triangles share, seen along the first one's normal, if they lie flat on each other. */
function sharedArea(first: Triangle, second: Triangle): number {
  if (dot(first.normal, second.normal) > OPPOSED) return 0;
  const { a, b, normal } = first;
  const corners = [second.a, second.b, second.c];
  if (corners.some((p) => Math.abs(dot(between(a, p), normal)) > tolerance.contact)) return 0;
  const along = between(a, b);
  const length = Math.sqrt(dot(along, along));
  const u = { x: along.x / length, y: along.y / length, z: along.z / length };
  const v = cross(normal, u);
  const flat = (p: Vec3): Point => ({ x: dot(between(a, p), u), y: dot(between(a, p), v) });
  const window = [first.a, first.b, first.c].map(flat);
  let shape = corners.map(flat).reverse();
  for (const [i, p] of window.entries()) shape = clipped(shape, p, window[(i + 1) % 3]!);
  return shape.reduce((sum, p, i) => sum + shape.at(i - 1)!.x * p.y - p.x * shape.at(i - 1)!.y, 0) / 2;
}

/** The part of a convex polygon to the left of the line through p and q (Sutherland and Hodgman). */
function clipped(polygon: readonly Point[], p: Point, q: Point): Point[] {
  const side = (r: Point) => (q.x - p.x) * (r.y - p.y) - (q.y - p.y) * (r.x - p.x);
  const out: Point[] = [];
  for (const [i, a] of polygon.entries()) {
    const b = polygon[(i + 1) % polygon.length]!;
    const [s, t] = [side(a), side(b)];
    if (s >= 0) out.push(a);
    if (s >= 0 !== t >= 0)
      out.push({ x: a.x + (s / (s - t)) * (b.x - a.x), y: a.y + (s / (s - t)) * (b.y - a.y) });
  }
  return out;
}
