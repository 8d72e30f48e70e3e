import type { Segment } from "../segment.ts";
import { tolerance } from "../tolerance.ts";

/**
 * Where the segments of a path (see `segmentsOf`) meet the upright line at `x`: the ordinates in rising order, each once, mm.
 * A piece that lies along the line counts by both its ends; segments that don't reach the line give none.
 */
export function ordinatesAt(segments: readonly Segment[], x: number): number[] {
  const found = segments.flatMap((segment) => ordinatesOf(segment, x));
  found.sort((a, b) => a - b);
  return found.filter((y, i) => i === 0 || y - found[i - 1]! > tolerance.exact);
}

function ordinatesOf(segment: Segment, x: number): number[] {
  const { from, to } = segment;
  const ends = [from, to].filter((end) => Math.abs(end.x - x) <= tolerance.snap).map((end) => end.y);
  if (segment.kind === "line") {
    if (ends.length > 0 || (from.x - x) * (to.x - x) > 0) return ends;
    return [from.y + ((x - from.x) / (to.x - from.x)) * (to.y - from.y)];
  }
  const { centre, radius, start, sweep } = segment;
  const aside = x - centre.x;
  if (Math.abs(aside) > radius) return ends;
  const up = Math.sqrt(radius * radius - aside * aside);
  const within = [up, -up].filter((rise) => {
    const turned = (Math.atan2(rise, aside) - start) * Math.sign(sweep);
    return turned - 2 * Math.PI * Math.floor(turned / (2 * Math.PI)) < Math.abs(sweep);
  });
  return [...ends, ...within.map((rise) => centre.y + rise)];
}
