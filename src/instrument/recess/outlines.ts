import { circle } from "../../geometry/circle.ts";
import type { Path, PathPoint } from "../../geometry/path.ts";

/** How far a round place that frees a corner for what is sharp reaches past the two sides that meet there, as a share of its radius. */
export const reliefReach = 1 - Math.SQRT1_2;

/** How far along either side, from the corner, it begins, as a share of its radius. */
const reliefFoot = Math.SQRT2;

/**
 * The outline of a recess so long and wide, mm, about its middle, counter-clockwise. Its corners keep a cutter's `radius` and are freed for a
 * body with sharp ones: each is a half circle through the corner, between places `radius` times the root of 2 from it. Nothing where the
 * sides are too short for two of them.
 */
export function relievedBox(length: number, width: number, radius: number): Path | undefined {
  const foot = radius * reliefFoot;
  if (Math.min(length, width) <= 2 * foot) return undefined;
  const [x, y] = [length / 2, width / 2];
  const points: PathPoint[] = [
    { x: -x, y: -y + foot, bulge: 1 },
    { x: -x + foot, y: -y, bulge: 0 },
    { x: x - foot, y: -y, bulge: 1 },
    { x, y: -y + foot, bulge: 0 },
    { x, y: y - foot, bulge: 1 },
    { x: x - foot, y, bulge: 0 },
    { x: -x + foot, y, bulge: 1 },
    { x: -x, y: y - foot, bulge: 0 },
  ];
  return { closed: true, points };
}

/** A box with rounded corners, so long and wide, mm, about its middle, counter-clockwise. A radius with no room, or of nothing, leaves them as round as there is room. */
export function roundedBox(length: number, width: number, radius: number): Path {
  const [x, y] = [length / 2, width / 2];
  const r = Math.min(radius, x, y);
  if (r === x && r === y) return circle({ x: 0, y: 0 }, r);
  const quarter = Math.tan(Math.PI / 8);
  const corner = (cx: number, cy: number, before: [number, number], after: [number, number]): PathPoint[] => [
    { x: cx + before[0] * r, y: cy + before[1] * r, bulge: r === 0 ? 0 : quarter },
    ...(r === 0 ? [] : [{ x: cx + after[0] * r, y: cy + after[1] * r, bulge: 0 }]),
  ];
  const points = [
    ...corner(-x + r, -y + r, [-1, 0], [0, -1]),
    ...corner(x - r, -y + r, [0, -1], [1, 0]),
    ...corner(x - r, y - r, [1, 0], [0, 1]),
    ...corner(-x + r, y - r, [0, 1], [-1, 0]),
  ];
  return { closed: true, points };
}

/** A path turned by so many degrees counter-clockwise about the origin, and then moved there, mm. */
export function laid(path: Path, turn: number, to: { readonly x: number; readonly y: number }): Path {
  const [c, s] = [Math.cos((turn * Math.PI) / 180), Math.sin((turn * Math.PI) / 180)];
  const points = path.points.map(({ x, y, bulge }) => ({
    ...{ x: to.x + c * x - s * y, y: to.y + s * x + c * y, bulge },
  }));
  return { closed: path.closed, points };
}
