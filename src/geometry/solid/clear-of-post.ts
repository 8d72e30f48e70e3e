import type { Point } from "../point.ts";
import { polygonRound } from "../polygon-round.ts";
import { listsApart, type Straight } from "./segments-apart.ts";
import type { Vec3 } from "./vec3.ts";

/** All that lies within a polygon and no higher than `top`, mm: a post without a foot. */
export type Post = { readonly corners: readonly Point[]; readonly top: number };

/**
 * How far straight pieces stay from a post, mm, the nearest of them; where one goes into it, how far it comes under the post's top there, negative. A post of
 * fewer than three corners has no inside, and is as far as its edges. Infinite where there is no piece.
 */
export function clearOfPost({ corners, top }: Post, pieces: readonly Straight[]): number {
  const edges = corners.map((corner, i) => {
    const next = corners[(i + 1) % corners.length]!;
    return { from: { ...corner, z: 0 }, to: { ...next, z: 0 } };
  });
  const lowered = pieces.map(({ from, to }): Straight => {
    return { from: { ...from, z: from.z - top }, to: { ...to, z: to.z - top } };
  });
  const box = extents(corners);
  const over = lowered
    .filter((piece) => overlaps(box, piece))
    .flatMap((piece) => partsInside(corners, piece));
  const lowest = over.reduce(
    (least, { from, to }) => Math.min(least, from.z, to.z),
    Number.POSITIVE_INFINITY,
  );
  if (lowest < 0) return lowest;
  // Beside the post and under its top only the way along the ground counts.
  return listsApart(lowered.flatMap(flattened), edges, lowest);
}

type Extents = { readonly low: Point; readonly high: Point };

function extents(points: readonly Point[]): Extents {
  const [x, y] = [points.map((point) => point.x), points.map((point) => point.y)];
  return { low: { x: Math.min(...x), y: Math.min(...y) }, high: { x: Math.max(...x), y: Math.max(...y) } };
}

function overlaps({ low, high }: Extents, { from, to }: Straight): boolean {
  const own = extents([from, to]);
  return own.high.x >= low.x && own.low.x <= high.x && own.high.y >= low.y && own.low.y <= high.y;
}

/** A piece in at most two, what lies under 0 laid flat. */
function flattened({ from, to }: Straight): Straight[] {
  if (from.z >= 0 && to.z >= 0) return [{ from, to }];
  const flat = (place: Vec3): Vec3 => ({ ...place, z: Math.max(0, place.z) });
  if (from.z <= 0 && to.z <= 0) return [{ from: flat(from), to: flat(to) }];
  const middle = along(from, to, from.z / (from.z - to.z));
  return [
    { from: flat(from), to: flat(middle) },
    { from: flat(middle), to: flat(to) },
  ];
}

function along(from: Vec3, to: Vec3, share: number): Vec3 {
  const at = (axis: "x" | "y" | "z") => from[axis] + (to[axis] - from[axis]) * share;
  return { x: at("x"), y: at("y"), z: at("z") };
}

/** What of a piece lies over the inside of a polygon. */
function partsInside(corners: readonly Point[], { from, to }: Straight): Straight[] {
  const [dx, dy] = [to.x - from.x, to.y - from.y];
  const shares = corners.flatMap((a, i) => {
    const b = corners[(i + 1) % corners.length]!;
    const [ex, ey] = [b.x - a.x, b.y - a.y];
    const across = dx * ey - dy * ex;
    if (across === 0) return [];
    const share = ((a.x - from.x) * ey - (a.y - from.y) * ex) / across;
    const onEdge = ((a.x - from.x) * dy - (a.y - from.y) * dx) / across;
    return share > 0 && share < 1 && onEdge >= 0 && onEdge <= 1 ? [share] : [];
  });
  const ends = [0, ...shares.sort((a, b) => a - b), 1];
  return ends.slice(1).flatMap((end, i) => {
    const start = ends[i]!;
    const middle = along(from, to, (start + end) / 2);
    return polygonRound(corners, middle) ? [{ from: along(from, to, start), to: along(from, to, end) }] : [];
  });
}
