import { cutPolygon } from "../geometry/cut-polygon.ts";
import type { Point } from "../geometry/point.ts";
import type { Vec3 } from "../geometry/solid/vec3.ts";
import type { EdgeProfile } from "../order/spec.ts";

/**
 * A flat front and how the edges that are cut of it are eased, mm: the corners of its faceted outline, counter-clockwise, all round or from one end of its cut edges to the other. `from` and `to` are
 * the stretch along the instrument, from the nut, that its edges are asked for.
 */
export type EasedFront = {
  readonly corners: readonly Point[];
  readonly closed: boolean;
  readonly profile: EdgeProfile;
  readonly arris: number;
  readonly from: number;
  readonly to: number;
};

/** How far the facets of an outline may stray, mm, and in how many a quarter round is cut. */
export const fineTop = { chord: 0.02, quarter: 12 } as const;

/**
 * A strip of a surface, as lines of as many corners, mm: four neighbours, two of one line and two of the next, are the corners of
 * a facet. Each corner stands in it once, so that it is short.
 */
export type Strip = readonly (readonly Vec3[])[];

/** A finished surface, among the instrument's axes: what is flat of it over the stretch asked for, by its corners, and strips of facets. */
export type FinishedTop = { readonly flat: readonly Vec3[]; readonly strips: readonly Strip[] };

/**
 * The finished surface of a front as seen from over it: what is left flat inside its eased edges, and these edges' facets.
 * `placed` puts a place of the front, so far down from it, where it lies.
 */
export function easedTop(front: EasedFront, placed: (place: Point, down: number) => Vec3): FinishedTop {
  const { corners, closed, profile, arris } = front;
  const rings = profileSteps(profile, arris).map(({ inward, down }) =>
    corners.map((_, i) => placed(inset(corners, closed, i, inward), down)),
  );
  const within = (facet: readonly Vec3[]) =>
    facet.some(({ x }) => x > front.from) && facet.some(({ x }) => x < front.to);
  const whole = closed ? rings.map((ring) => [...ring, ring[0]!]) : rings;
  const flat = cutAt(cutAt(rings.at(-1)!, front.from, 1), front.to, -1);
  return { flat, strips: stripsWhere(whole, within) };
}

/** What of a flat piece lies past some x, mm, toward the tail (1) or the head (-1). */
function cutAt(corners: readonly Vec3[], x: number, toward: 1 | -1): Vec3[] {
  return cutPolygon(
    corners,
    (corner) => toward * (corner.x - x),
    (a, b, share) => ({ x, y: a.y + (b.y - a.y) * share, z: a.z + (b.z - a.z) * share }),
  );
}

/** The parts of a strip where all over its breadth some facet is asked for, each as a strip of its own. */
export function stripsWhere(strip: Strip, wanted: (facet: readonly Vec3[]) => boolean): Strip[] {
  const last = strip[0]!.length - 1;
  const asked = (i: number) =>
    strip.slice(1).some((line, k) => wanted([strip[k]![i]!, strip[k]![i + 1]!, line[i + 1]!, line[i]!]));
  const found: Strip[] = [];
  let from: number | null = null;
  for (let i = 0; i <= last; i++) {
    const there = i < last && asked(i);
    if (there && from === null) from = i;
    if (there || from === null) continue;
    const [begin, end] = [from, i + 1];
    found.push(strip.map((line) => line.slice(begin, end)));
    from = null;
  }
  return found;
}

/** From the wall to the face: how far inward and how far under the face the edge's profile passes. */
function profileSteps(profile: EdgeProfile, size: number): { inward: number; down: number }[] {
  if (profile === "none" || size === 0) return [{ inward: 0, down: 0 }];
  const count = profile === "bevel" ? 1 : fineTop.quarter;
  return Array.from({ length: count + 1 }, (_, i) => {
    if (profile === "bevel") return { inward: i * size, down: (1 - i) * size };
    const angle = ((i / count) * Math.PI) / 2;
    return { inward: size * (1 - Math.cos(angle)), down: size * (1 - Math.sin(angle)) };
  });
}

/** A corner of a faceted outline moved inward by the same from both its edges; where the outline ends, by its last edge alone. */
function inset(points: readonly Point[], closed: boolean, i: number, by: number): Point {
  const { x, y } = points[i]!;
  const at = (k: number) => points[closed ? (k + points.length) % points.length : k];
  const before = normal(at(i - 1), at(i)) ?? normal(at(i), at(i + 1))!;
  const after = normal(at(i), at(i + 1)) ?? before;
  const along = 1 + before.x * after.x + before.y * after.y;
  return { x: x + ((before.x + after.x) * by) / along, y: y + ((before.y + after.y) * by) / along };
}

/** The way inward of an edge of a counter-clockwise outline; none where an end is missing. */
function normal(a: Point | undefined, b: Point | undefined): Point | undefined {
  if (a === undefined || b === undefined) return undefined;
  const [dx, dy] = [b.x - a.x, b.y - a.y];
  const length = Math.hypot(dx, dy);
  return { x: -dy / length, y: dx / length };
}
