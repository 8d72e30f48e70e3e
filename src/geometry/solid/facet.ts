import type { Path } from "../path.ts";
import { directionOn, pointOn } from "../path-measures/segment-places.ts";
import type { Point } from "../point.ts";
import { type Arc, segmentsOf } from "../segment.ts";
import { tolerance } from "../tolerance.ts";

/** Whether a chord error (mm) can be worked with: finite, and not below `tolerance.exact`. */
export function isChord(chord: number): boolean {
  return Number.isFinite(chord) && chord >= tolerance.exact;
}

/**
 * How many chords each segment of a path takes, so that none strays from its arc by more than `chord` (mm): 1 for a
 * line, at least 2 for an arc.
 */
export function facetCounts(path: Path, chord: number): number[] {
  return segmentsOf(path).map((segment) => {
    if (segment.kind === "line") return 1;
    const widest = 4 * Math.asin(Math.sqrt(Math.min(1, chord / segment.radius / 2)));
    let count = Math.max(2, Math.ceil(Math.abs(segment.sweep) / widest));
    while (outward(segment, count) > chord) count++;
    return count;
  });
}

/**
 * The vertices of a path with each segment in so many chords (a line's are evenly spaced).
 *
 * The ends of an arc stay; the vertices between stand a little off it, outward from its centre, so that the chords
 * enclose just the area that the arc does. So a mesh has the volume of what it stands for, at any chord error. The same
 * path gives the same vertices, whichever way it runs: parts that share a joint fit if they are made of one path.
 */
export function facet(path: Path, counts: readonly number[]): Point[] {
  const points: Point[] = [];
  for (const [i, segment] of segmentsOf(path).entries()) {
    const count = counts[i]!;
    points.push({ x: segment.from.x, y: segment.from.y });
    const off = segment.kind === "arc" && count > 1 ? Math.sign(segment.sweep) * outward(segment, count) : 0;
    for (let k = 1; k < count; k++) {
      const { x, y } = pointOn(segment, k / count);
      const along = directionOn(segment, k / count);
      points.push({ x: x + off * along.y, y: y - off * along.x });
    }
  }
  if (!path.closed) points.push(...path.points.slice(-1).map(({ x, y }) => ({ x, y })));
  return points;
}

/**
 * How far off the arc, from its centre, the vertices between its ends stand for the fan of k chords of the angle d to
 * have the sector's area. With the radius r (1 + e) for them: (k - 2) e² + 2 (k - 1) e = k (d / sin d - 1).
 */
function outward({ radius, sweep }: Arc, count: number): number {
  const step = Math.abs(sweep) / count;
  const more = step < 1e-3 ? (step * step) / 6 : step / Math.sin(step) - 1;
  const product = count * more;
  const half = count - 1;
  return (radius * product) / (half + Math.sqrt(half * half + (count - 2) * product));
}
