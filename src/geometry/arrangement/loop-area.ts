import type { Edge } from "./edge.ts";

/**
 * The area within a loop of edges, mm², counter-clockwise positive: Green's theorem about the loop's own first point;
 * an arc adds its cap, r² (sweep - sin sweep) / 2.
 */
export function loopArea(loop: readonly Edge[]): number {
  const first = loop[0];
  if (first === undefined) return 0;
  let twice = 0;
  for (const edge of loop) {
    twice += (edge.ax - first.ax) * (edge.by - first.ay) - (edge.ay - first.ay) * (edge.bx - first.ax);
    if (edge.turn !== 0) {
      const sweep = 4 * Math.atan(edge.bulge);
      twice += edge.r * edge.r * (sweep - Math.sin(sweep));
    }
  }
  return twice / 2;
}
