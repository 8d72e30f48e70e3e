import { gaussRule } from "../gauss-rule.ts";
import type { Path } from "../path.ts";
import { segmentsOf } from "../segment.ts";

/**
 * Integrals over the area inside a closed path, about the origin: of 1 (mm²), x and y (mm³), x², xy and y² (mm⁴).
 * Positive for a counter-clockwise path, negative for a clockwise one.
 */
export type AreaMoments = {
  readonly area: number;
  readonly x: number;
  readonly y: number;
  readonly xx: number;
  readonly xy: number;
  readonly yy: number;
};

type Sums = { -readonly [key in keyof AreaMoments]: number };

/**
 * The moments of the area inside a path, exact for arcs; an open path is measured as if a line closed it, and fewer than
 * two points give none.
 *
 * By Green's theorem, as sums along the boundary: the chords' polygon in closed form, and for each arc the difference
 * between it and its chord by Gauss's rule of 16 points, which is exact to rounding for what is integrated here
 * (polynomials in sine and cosine over at most half a turn) and, unlike the closed form, loses nothing where an arc is
 * nearly straight. Worked about the first point, so that a path far from the origin loses nothing either.
 */
export function areaMoments(path: Path): AreaMoments {
  const sums = noMoments();
  const origin = path.points[0];
  if (!origin) return sums;
  for (const segment of segmentsOf({ ...path, closed: true })) {
    const [ax, ay] = [segment.from.x - origin.x, segment.from.y - origin.y];
    const [bx, by] = [segment.to.x - origin.x, segment.to.y - origin.y];
    addChord(sums, ax, ay, bx, by, 1);
    if (segment.kind === "arc") add(sums, moved(sliver(bx - ax, by - ay, segment.sweep / 2), ax, ay));
  }
  return moved(sums, origin.x, origin.y);
}

function noMoments(): Sums {
  return { area: 0, x: 0, y: 0, xx: 0, xy: 0, yy: 0 };
}

function add(sums: Sums, more: AreaMoments): void {
  for (const key of ["area", "x", "y", "xx", "xy", "yy"] as const) sums[key] += more[key];
}

/** Adds `times` the share of the straight way from a to b in the sums along the boundary. */
function addChord(sums: Sums, ax: number, ay: number, bx: number, by: number, times: number): void {
  const cross = times * (ax * by - bx * ay);
  sums.area += cross / 2;
  sums.x += (cross * (ax + bx)) / 6;
  sums.y += (cross * (ay + by)) / 6;
  sums.xx += (cross * (ax * ax + ax * bx + bx * bx)) / 12;
  sums.yy += (cross * (ay * ay + ay * by + by * by)) / 12;
  sums.xy += (cross * (2 * ax * ay + ax * by + bx * ay + 2 * bx * by)) / 24;
}

/** The piece between an arc of half sweep `half` and its chord v, about the arc's start. */
function sliver(vx: number, vy: number, half: number): Sums {
  const sums = noMoments();
  const scale = half / Math.sin(half);
  for (const [t, weight] of GAUSS) {
    const reach = Math.sin(half * t) / Math.sin(half);
    const [c, s] = [Math.cos(half * (1 - t)), -Math.sin(half * (1 - t))];
    const [x, y] = [reach * (c * vx - s * vy), reach * (s * vx + c * vy)];
    const [e, f] = [Math.cos(half * (2 * t - 1)), Math.sin(half * (2 * t - 1))];
    const [dx, dy] = [weight * scale * (e * vx - f * vy), weight * scale * (f * vx + e * vy)];
    const cross = x * dy - y * dx;
    sums.area += cross / 2;
    sums.x += (cross * x) / 3;
    sums.y += (cross * y) / 3;
    sums.xx += (cross * x * x) / 4;
    sums.xy += (cross * x * y) / 4;
    sums.yy += (cross * y * y) / 4;
  }
  return sums;
}

const GAUSS = gaussRule(16);

/** The moments of the same area moved by (dx, dy). */
function moved(m: AreaMoments, dx: number, dy: number): AreaMoments {
  return {
    area: m.area,
    x: m.x + dx * m.area,
    y: m.y + dy * m.area,
    xx: m.xx + 2 * dx * m.x + dx * dx * m.area,
    xy: m.xy + dx * m.y + dy * m.x + dx * dy * m.area,
    yy: m.yy + 2 * dy * m.y + dy * dy * m.area,
  };
}
