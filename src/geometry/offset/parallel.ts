import { arcEdge, type Edge, lineEdge } from "../arrangement/edge.ts";
import { tolerance } from "../tolerance.ts";

/**
 * An edge with its unit normals to the right at both ends, and the edge `distance` (mm) to its right (to its left where
 * negative). An arc with its centre no farther than that on the same side has no parallel.
 */
export type Parallel = {
  readonly source: Edge;
  readonly startX: number;
  readonly startY: number;
  readonly endX: number;
  readonly endY: number;
  readonly edge: Edge | undefined;
  readonly name: number;
};

/** The parallel of an edge; `name` becomes its source. */
export function parallelOf(source: Edge, distance: number, name: number): Parallel {
  const { ax, ay, bx, by, turn, cx, cy, r } = source;
  if (turn === 0) {
    const dx = bx - ax;
    const dy = by - ay;
    const length = Math.sqrt(dx * dx + dy * dy);
    const x = dy / length;
    const y = -dx / length;
    const [mx, my] = [x * distance, y * distance];
    const edge = lineEdge(ax + mx, ay + my, bx + mx, by + my, 1, name);
    return { source, startX: x, startY: y, endX: x, endY: y, edge, name };
  }
  const startX = (turn * (ax - cx)) / r;
  const startY = (turn * (ay - cy)) / r;
  const endX = (turn * (bx - cx)) / r;
  const endY = (turn * (by - cy)) / r;
  const radius = r + turn * distance;
  const edge =
    radius > tolerance.snap
      ? arcEdge(
          ax + startX * distance,
          ay + startY * distance,
          bx + endX * distance,
          by + endY * distance,
          source.bulge,
          cx,
          cy,
          radius,
          1,
          name,
        )
      : undefined;
  return { source, startX, startY, endX, endY, edge, name };
}

/** Where what is drawn for an edge starts: at its parallel, or at the centre of an arc that has none. */
export function startOf(
  { edge, source, startX, startY }: Parallel,
  distance: number,
): { x: number; y: number } {
  if (edge === undefined) return { x: source.cx, y: source.cy };
  return { x: source.ax + startX * distance, y: source.ay + startY * distance };
}
