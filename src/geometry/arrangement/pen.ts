import { tolerance } from "../tolerance.ts";
import { arcEdge, type Edge, lineEdge } from "./edge.ts";

/**
 * One closed loop of edges while it is drawn, mm: where it began, where the pen stands, and the edges so far. It never
 * leaves the function that draws with it.
 */
export type Pen = {
  readonly edges: Edge[];
  readonly homeX: number;
  readonly homeY: number;
  x: number;
  y: number;
};

/** A pen set down at a place. */
export function penAt(x: number, y: number): Pen {
  return { edges: [], homeX: x, homeY: y, x, y };
}

/**
 * Draw an edge that starts where the pen stands. One whose end is nearer than `tolerance.tiny` is not drawn, and the
 * next one starts where the pen stands, so that a loop never has a gap and strays less than that.
 */
export function drawEdge(pen: Pen, edge: Edge): void {
  if (Math.abs(edge.bx - pen.x) < tolerance.tiny && Math.abs(edge.by - pen.y) < tolerance.tiny) return;
  const meets = edge.ax === pen.x && edge.ay === pen.y;
  pen.edges.push(meets ? edge : withEnds(edge, pen.x, pen.y, edge.bx, edge.by));
  pen.x = edge.bx;
  pen.y = edge.by;
}

/** Draw a line to a place. */
export function drawLine(pen: Pen, x: number, y: number, weight: number, source: number): void {
  drawEdge(pen, lineEdge(pen.x, pen.y, x, y, weight, source));
}

/** End the loop where it began, and put it behind `all`. A loop of one edge or none is nothing. */
export function closeLoop({ edges, homeX, homeY }: Pen, all: Edge[], starts: number[]): void {
  const last = edges.at(-1);
  if (last === undefined || edges.length < 2) return;
  if (last.bx !== homeX || last.by !== homeY)
    edges[edges.length - 1] = withEnds(last, last.ax, last.ay, homeX, homeY);
  starts.push(all.length);
  for (const edge of edges) all.push(edge);
}

/** An edge whose ends are moved by less than the tolerance, on its circle as before. */
function withEnds(edge: Edge, ax: number, ay: number, bx: number, by: number): Edge {
  const { bulge, cx, cy, r, weight, source } = edge;
  if (edge.turn === 0) return lineEdge(ax, ay, bx, by, weight, source);
  return arcEdge(ax, ay, bx, by, bulge, cx, cy, r, weight, source);
}
