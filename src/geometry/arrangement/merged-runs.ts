import { distanceToEdge } from "../intersect/distance-to-edge.ts";
import { middleOf } from "../intersect/middle.ts";
import { tolerance } from "../tolerance.ts";
import type { Edge } from "./edge.ts";
import type { Run } from "./runs.ts";

/** How many edges a run that lies on another can have: more would have met the other's vertices. */
const few = 4;

/**
 * Runs that lie on one another made one, with the sum of their weights; those whose weights cancel are gone. The
 * first of those that lie on one another stands for all.
 */
export function mergedRuns(runs: readonly Run[]): Run[] {
  const kept: Run[] = [];
  const between = new Map<string, number[]>();
  for (const run of runs) {
    if (run.from < 0 || run.from === run.to || run.edges.length > few) {
      kept.push(run);
      continue;
    }
    const key = run.from < run.to ? `${run.from} ${run.to}` : `${run.to} ${run.from}`;
    const others = between.get(key) ?? [];
    const same = others.find((k) => coincide(kept[k]!, run));
    if (same === undefined) {
      between.set(key, [...others, kept.length]);
      kept.push(run);
    } else kept[same] = together(kept[same]!, run);
  }
  return kept.filter((run) => run.weight !== 0);
}

function together(first: Run, other: Run): Run {
  const weight = first.weight + (first.from === other.from ? other.weight : -other.weight);
  return { ...first, edges: first.edges.map((edge) => ({ ...edge, weight })), weight };
}

/** Whether two runs between the same vertices lie on one another, told at the ends and middles of their edges. */
function coincide(a: Run, b: Run): boolean {
  return liesOn(a.edges, b.edges) && liesOn(b.edges, a.edges);
}

function liesOn(edges: readonly Edge[], others: readonly Edge[]): boolean {
  const near = ([x, y]: readonly [number, number]) =>
    others.some((other) => distanceToEdge(other, x, y) < 4 * tolerance.snap);
  return edges.every(
    (edge) => near([edge.bx, edge.by]) && near(middleOf(edge, [edge.ax, edge.ay, edge.bx, edge.by])),
  );
}
