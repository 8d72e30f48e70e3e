import type { Path } from "../path.ts";
import type { Point } from "../point.ts";
import { type Arc, segmentsOf } from "../segment.ts";

/**
 * How many chords each segment of a path takes, so that none strays from its arc by more than `chord` (mm): 1 for a
 * line, at least 2 for an arc.
 */
export function facetCounts(path: Path, chord: number): number[] {
  return segmentsOf(path).map((segment) => {
    if (segment.kind === "line") return 1;
    const widest = 2 * Math.acos(Math.max(0, 1 - chord / segment.radius));
    let count = Math.max(2, Math.ceil(Math.abs(segment.sweep) / widest));
    while (outward(segment, count) - segment.radius > chord) count++;
    return count;
  });
}

/**
 * The vertices of a path with each segment in so many chords (a line's are evenly spaced).
 *
 * The ends of an arc stay; the vertices between stand a little off it, outward from its centre, so that the chords
 * enclose just the area that the arc does. So a mesh has the volume of what it stands for, at any chord error.
 */
export function facet(path: Path, counts: readonly number[]): Point[] {
  const points: Point[] = [];
  for (const [i, segment] of segmentsOf(path).entries()) {
    const count = counts[i]!;
    points.push({ x: segment.from.x, y: segment.from.y });
    const radius = segment.kind === "arc" && count > 1 ? outward(segment, count) : 0;
    for (let k = 1; k < count; k++) {
      const share = k / count;
      if (segment.kind === "line") {
        const { from, to } = segment;
        points.push({ x: from.x + share * (to.x - from.x), y: from.y + share * (to.y - from.y) });
        continue;
      }
      const angle = segment.start + share * segment.sweep;
      const { x, y } = segment.centre;
      points.push({ x: x + radius * Math.cos(angle), y: y + radius * Math.sin(angle) });
    }
  }
  if (!path.closed) points.push(...path.points.slice(-1).map(({ x, y }) => ({ x, y })));
  return points;
}

/**
 * The radius on which the vertices between an arc's ends stand for the fan of chords to have the sector's area:
 * (k - 2) ρ² + 2 r ρ = r² k d / sin d, for k chords of the angle d.
 */
function outward({ radius, sweep }: Arc, count: number): number {
  const step = Math.abs(sweep) / count;
  const area = (radius * radius * count * step) / Math.sin(step);
  return area / (radius + Math.sqrt(radius * radius + (count - 2) * area));
}
