import type { Path, PathPoint } from "./path.ts";

/** A path with its corners rounded, or the first corner that can't be, with the room that its legs leave. */
export type Rounding =
  | { readonly kind: "ok"; readonly path: Path }
  | { readonly kind: "no-room"; readonly index: number; readonly most: number }
  | { readonly kind: "beside-arc"; readonly index: number };

/**
 * Round corners of a closed path between straight legs by arcs tangent to both.
 *
 * `radii[i]` in mm belongs to the corner at point i; 0 leaves it, and a corner that is none (its legs on one line) stays as
 * it is. `no-room` when the arcs of a leg's two ends would overlap on it, with the largest radius that this corner could
 * have alone; `beside-arc` when a leg is an arc.
 */
export function roundCorners(path: Path, radii: readonly number[]): Rounding {
  const { points } = path;
  const n = points.length;
  const at = (i: number) => points[(i + n) % n]!;
  const cuts = points.map((_, i) => cutBack(at(i - 1), at(i), at(i + 1), radii[i] ?? 0));
  for (let i = 0; i < n; i++) {
    if (cuts[i]!.back === 0) continue;
    if (at(i - 1).bulge !== 0 || at(i).bulge !== 0) return { kind: "beside-arc", index: i };
    for (const [other, leg] of [
      [cuts[(i - 1 + n) % n]!.back, distance(at(i - 1), at(i))],
      [cuts[(i + 1) % n]!.back, distance(at(i), at(i + 1))],
    ] as const) {
      if (cuts[i]!.back + other > leg)
        return { kind: "no-room", index: i, most: (leg - other) / cuts[i]!.tangent };
    }
  }
  const rounded = points.flatMap((point, i): PathPoint[] => {
    const { back, bulge } = cuts[i]!;
    if (back === 0) return [point];
    return [
      { ...towards(point, at(i - 1), back), bulge },
      { ...towards(point, at(i + 1), back), bulge: 0 },
    ];
  });
  return { kind: "ok", path: { closed: path.closed, points: rounded } };
}

/** How far back on both legs an arc of this radius begins, and its bulge. */
function cutBack(before: PathPoint, corner: PathPoint, after: PathPoint, radius: number) {
  const [ax, ay] = [corner.x - before.x, corner.y - before.y];
  const [bx, by] = [after.x - corner.x, after.y - corner.y];
  const turn = Math.atan2(ax * by - ay * bx, ax * bx + ay * by);
  const tangent = Math.abs(Math.tan(turn / 2));
  return { back: radius * tangent, tangent, bulge: Math.tan(turn / 4) };
}

function distance(a: PathPoint, b: PathPoint): number {
  return Math.hypot(a.x - b.x, a.y - b.y);
}

function towards(from: PathPoint, to: PathPoint, by: number): { x: number; y: number } {
  const share = by / distance(from, to);
  return { x: from.x + (to.x - from.x) * share, y: from.y + (to.y - from.y) * share };
}
