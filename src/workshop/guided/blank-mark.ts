import type { Path } from "../../geometry/path.ts";
import type { Point } from "../../geometry/point.ts";

/** Where a square blank lies on a base, as a line from the cut edge round its far side at `y` and back; `run` is what is cut of it; mm. */
export function blankMark(
  run: readonly Point[],
  { minX, maxX }: { readonly minX: number; readonly maxX: number },
  y: number,
): Path {
  const ends = [run[0]!, run.at(-1)!];
  const near = (x: number) =>
    ends.reduce((best, at) => (Math.abs(at.x - x) < Math.abs(best.x - x) ? at : best)).y;
  const corners = [
    { x: minX, y: near(minX) },
    { x: minX, y },
    { x: maxX, y },
    { x: maxX, y: near(maxX) },
  ];
  return { closed: false, points: corners.map((at) => ({ ...at, bulge: 0 })) };
}
