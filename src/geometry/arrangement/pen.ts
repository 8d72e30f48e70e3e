import { tolerance } from "../tolerance.ts";
import { arcEdge, type Edge, lineEdge } from "./edge.ts";

/**
 * Draws one closed loop of edges, mm. `x`, `y` is where it stands. An edge whose end is nearer than `tolerance.tiny` is
 * not drawn, and the next one starts where the pen stands, so that a loop never has a gap and strays less than that.
 */
export class Pen {
  readonly edges: Edge[] = [];
  readonly homeX: number;
  readonly homeY: number;
  x: number;
  y: number;

  constructor(x: number, y: number) {
    this.homeX = x;
    this.homeY = y;
    this.x = x;
    this.y = y;
  }

  /** Draw an edge that starts here. */
  draw(edge: Edge): void {
    if (Math.abs(edge.bx - this.x) < tolerance.tiny && Math.abs(edge.by - this.y) < tolerance.tiny) return;
    const meets = edge.ax === this.x && edge.ay === this.y;
    this.edges.push(meets ? edge : withEnds(edge, this.x, this.y, edge.bx, edge.by));
    this.x = edge.bx;
    this.y = edge.by;
  }

  /** Draw a line to a place. */
  line(x: number, y: number, weight: number, source: number): void {
    this.draw(lineEdge(this.x, this.y, x, y, weight, source));
  }

  /** End the loop where it began, and put it behind `all`. A loop of one edge or none is nothing. */
  close(all: Edge[], starts: number[]): void {
    const last = this.edges.at(-1);
    if (last === undefined || this.edges.length < 2) return;
    if (last.bx !== this.homeX || last.by !== this.homeY)
      this.edges[this.edges.length - 1] = withEnds(last, last.ax, last.ay, this.homeX, this.homeY);
    starts.push(all.length);
    for (const edge of this.edges) all.push(edge);
  }
}

/** An edge whose ends are moved by less than the tolerance, on its circle as before. */
function withEnds(edge: Edge, ax: number, ay: number, bx: number, by: number): Edge {
  const { bulge, cx, cy, r, weight, source } = edge;
  if (edge.turn === 0) return lineEdge(ax, ay, bx, by, weight, source);
  return arcEdge(ax, ay, bx, by, bulge, cx, cy, r, weight, source);
}
