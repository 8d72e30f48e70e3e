import type { Arc, Segment } from "../segment.ts";
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
  return [...ends, ...onCircle(segment, x).filter((y) => isOnArc(segment, x, y))];
}

/**
 * Both ordinates of an arc's circle at x. Reckoned from the arc's start, by its curvature and not by its centre, which of a
 * nearly straight arc is too far away for its digits: k (dx² + dy²) = 2 (dx nx + dy ny), n the unit way to the centre.
 */
function onCircle({ from, radius, start, sweep }: Arc, x: number): number[] {
  const k = 1 / radius;
  const [nx, ny] = [-Math.cos(start), -Math.sin(start)];
  const dx = x - from.x;
  const rest = dx * (k * dx - 2 * nx);
  const under = ny * ny - k * rest;
  if (under < 0 || sweep === 0) return [];
  const far = ny + (ny < 0 ? -1 : 1) * Math.sqrt(under);
  return far === 0 ? [from.y] : [from.y + far / k, from.y + rest / far];
}

/** Whether a place on an arc's circle is on the arc: between its chord and its height over that. */
function isOnArc({ from, to, radius, sweep }: Arc, x: number, y: number): boolean {
  const [vx, vy] = [to.x - from.x, to.y - from.y];
  const chord = Math.hypot(vx, vy);
  const over = (Math.sign(sweep) * (vy * (x - from.x) - vx * (y - from.y))) / chord;
  const along = (vx * (x - from.x) + vy * (y - from.y)) / chord;
  const height = 2 * radius * Math.sin(sweep / 4) ** 2;
  const near = tolerance.snap;
  const reach = Math.max(chord, 2 * radius * Math.abs(Math.sin(sweep / 2)));
  return over > -near && over < height + near && along > -near && along < reach + near;
}
