import { type Chain, nextInLoop } from "./chain.ts";
import type { Contacts } from "./contacts.ts";
import type { Edge } from "./edge.ts";
import { mergedRuns } from "./merged-runs.ts";
import { subedge } from "./subedge.ts";
import type { Vertices } from "./vertices.ts";

/**
 * Edges that follow one another from one junction to the next with nothing happening between. A loop that meets nothing
 * is one run from -1 to -1. Runs that lie on one another are one run with the sum of their weights.
 */
export type Run = {
  readonly from: number;
  readonly to: number;
  readonly edges: readonly Edge[];
  readonly weight: number;
};

/** A piece of an edge between two vertices. */
type Step = { readonly from: number; readonly to: number; readonly edge: Edge };

/** Cuts a chain at its contacts into runs. */
export function runsOf(chain: Chain, contacts: Contacts, vertices: Vertices): Run[] {
  const { edges, starts } = chain;
  const next = nextInLoop(chain);
  const cutsOf = cutsByEdge(edges, contacts, vertices);
  const runs: Run[] = [];
  for (let k = 0; k < starts.length; k++) {
    const end = starts[k + 1] ?? edges.length;
    const steps: Step[] = [];
    for (let i = starts[k]!; i < end; i++)
      addSteps(steps, edges[i]!, vertices.root(i), cutsOf.get(i), vertices.root(next[i]!), vertices);
    addRuns(runs, steps, vertices);
  }
  return mergedRuns(runs);
}

/** For each edge that is cut, its vertices in order along it. */
function cutsByEdge(edges: readonly Edge[], { cuts }: Contacts, vertices: Vertices): Map<number, number[]> {
  const byEdge = new Map<number, number[]>();
  for (let k = 0; k < cuts.length; k += 2) {
    const list = byEdge.get(cuts[k]!);
    if (list === undefined) byEdge.set(cuts[k]!, [vertices.root(cuts[k + 1]!)]);
    else list.push(vertices.root(cuts[k + 1]!));
  }
  for (const [i, list] of byEdge) {
    if (list.length < 2) continue;
    const along = new Map(list.map((v) => [v, shareAlong(edges[i]!, vertices.x(v), vertices.y(v))]));
    list.sort((a, b) => along.get(a)! - along.get(b)!);
  }
  return byEdge;
}

/** How far along an edge a point of it is, from 0 to 1: rises steadily on lines and on arcs up to half a circle. */
function shareAlong(edge: Edge, x: number, y: number): number {
  const fromA = Math.sqrt((x - edge.ax) ** 2 + (y - edge.ay) ** 2);
  const fromB = Math.sqrt((x - edge.bx) ** 2 + (y - edge.by) ** 2);
  return fromA / (fromA + fromB);
}

function addSteps(
  steps: Step[],
  edge: Edge,
  from: number,
  cuts: readonly number[] | undefined,
  to: number,
  vertices: Vertices,
) {
  let at = from;
  for (const vertex of cuts === undefined ? [to] : [...cuts, to]) {
    if (vertex === at) continue;
    const [ax, ay, bx, by] = [vertices.x(at), vertices.y(at), vertices.x(vertex), vertices.y(vertex)];
    const whole = ax === edge.ax && ay === edge.ay && bx === edge.bx && by === edge.by;
    steps.push({ from: at, to: vertex, edge: whole ? edge : subedge(edge, ax, ay, bx, by) });
    at = vertex;
  }
}

/** Gathers the steps of one loop into runs, beginning at a junction where it has one. */
function addRuns(runs: Run[], steps: readonly Step[], vertices: Vertices) {
  const first = steps.findIndex((step) => vertices.junction(step.from));
  if (first < 0) {
    if (steps.length > 1)
      runs.push({ from: -1, to: -1, edges: steps.map((step) => step.edge), weight: steps[0]!.edge.weight });
    return;
  }
  let edges: Edge[] = [];
  let from = steps[first]!.from;
  for (let k = 0; k < steps.length; k++) {
    const step = steps[(first + k) % steps.length]!;
    edges.push(step.edge);
    if (!vertices.junction(step.to)) continue;
    runs.push({ from, to: step.to, edges, weight: step.edge.weight });
    edges = [];
    from = step.to;
  }
}
