import type { Path } from "./path.ts";

/**
 * A path with one axis turned round: `x` changes the sign of x, `y` that of y.
 *
 * The order of its points is turned round too, so that a counter-clockwise outline stays counter-clockwise. A closed path
 * keeps its first point.
 */
export function mirrored(path: Path, axis: "x" | "y"): Path {
  const flip = ({ x, y }: { x: number; y: number }) => ({
    x: axis === "x" ? 0 - x : x,
    y: axis === "y" ? 0 - y : y,
  });
  const { closed, points } = path;
  const n = points.length;
  if (n === 0) return path;
  return {
    closed,
    points: points.map((_, i) => {
      const source = closed ? (n - i) % n : n - 1 - i;
      const bulge = points[(source - 1 + n) % n]!.bulge;
      return { ...flip(points[source]!), bulge: !closed && i === n - 1 ? 0 : bulge };
    }),
  };
}
