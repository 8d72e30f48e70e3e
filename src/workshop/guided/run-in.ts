import type { Path, PathPoint } from "../../geometry/path.ts";
import { directionOn } from "../../geometry/path-measures/segment-places.ts";
import { segmentLength, segmentsOf } from "../../geometry/segment.ts";

/** How far a guided edge is led on beyond the work, mm: one collar's diameter, kept between these two (S, lengths G: default, confirm). */
export const runLengths = { least: 50, most: 75 } as const;

/** The length of run-in and run-out for a guide of a diameter, mm. */
export function runLength(diameter: number): number {
  return Math.min(runLengths.most, Math.max(runLengths.least, diameter));
}

/** An open path led on straight at both ends, in its directions there, by a length and by the wood that goes on there; mm. It must have some length itself. */
export function ledOnBy(
  { points }: Path,
  length: number,
  [before, behind]: readonly [first: number, last: number] = [0, 0],
): Path {
  const real = segmentsOf({ closed: false, points }).filter((segment) => segmentLength(segment) > 0);
  const [first, last] = [directionOn(real[0]!, 0), directionOn(real.at(-1)!, 1)];
  const [start, end] = [points[0]!, points.at(-1)!];
  const [back, on] = [length + before, length + behind];
  const from: PathPoint = { x: start.x - first.x * back, y: start.y - first.y * back, bulge: 0 };
  const to: PathPoint = { x: end.x + last.x * on, y: end.y + last.y * on, bulge: 0 };
  return { closed: false, points: [from, ...points, to] };
}
