import type { Edge } from "./edge.ts";
import type { Loop } from "./outline.ts";
import { subedge } from "./subedge.ts";

/**
 * Joins edges that follow one another and were cut from one edge. Arcs are joined only up to half a circle. A loop in
 * which nothing was cut is given back as it is.
 */
export function rejoined(loop: Loop): Loop {
  const count = loop.length;
  let seam = -1;
  let cut = false;
  for (let i = 0; i < count; i++) {
    if (continues(loop[(i + count - 1) % count]!, loop[i]!)) cut = true;
    else if (seam < 0) seam = i;
  }
  if (!cut || seam < 0) return loop;
  return joinedAlong([...loop.slice(seam), ...loop.slice(0, seam)]);
}

/** The same for edges that follow one another without coming back to the first. */
export function joinedAlong(edges: readonly Edge[]): Edge[] {
  const joined: Edge[] = [];
  for (const edge of edges) {
    const last = joined.at(-1);
    if (last !== undefined && continues(last, edge))
      joined[joined.length - 1] = subedge(last, last.ax, last.ay, edge.bx, edge.by);
    else joined.push(edge);
  }
  return joined;
}

/** Whether an edge goes on where another cut from the same one ends, the two together at most half a circle. */
function continues(a: Edge, b: Edge): boolean {
  if (a.source !== b.source || a.turn !== b.turn) return false;
  if (a.turn === 0) return (a.bx - a.ax) * (b.bx - b.ax) + (a.by - a.ay) * (b.by - b.ay) > 0;
  const chordX = b.bx - a.ax;
  const chordY = b.by - a.ay;
  return a.cx === b.cx && a.cy === b.cy && a.turn * (chordX * (a.by - a.ay) - chordY * (a.bx - a.ax)) < 0;
}
