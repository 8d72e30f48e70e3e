import type Flatbush from "flatbush";
import type { Edge } from "./edge.ts";
import type { Fans, Half } from "./fan.ts";
import type { Run } from "./runs.ts";
import { windingBeside } from "./winding.ts";

/**
 * The winding to the left of each half of each run. Found once for each ring of halves round a face, so that whatever
 * is kept by it closes: at a vertex, the windings of the sectors between the edges are those of rings.
 */
export function windingsOf(
  runs: readonly Run[],
  fans: Fans,
  edges: readonly Edge[],
  index: Flatbush,
): Int32Array {
  const ringOf = ringsOf(runs, fans);
  const firstEdge = firstEdges(runs);
  const longest = new Map<number, Longest>();
  runs.forEach((run, k) => {
    const found = longestIn(run, firstEdge[k]!);
    for (const half of [2 * k, 2 * k + 1]) {
      const ring = ringOf[half]!;
      const before = longest.get(ring);
      if (before === undefined || found.chord > before.chord) longest.set(ring, { ...found, half });
    }
  });
  const known = new Map<number, number>();
  const doubtful: number[] = [];
  for (const [ring, { half, edge }] of longest) {
    const winding = leftOf(edges, index, edge, half, runs[half >> 1]!.weight);
    if (winding === undefined) doubtful.push(ring);
    else known.set(ring, winding);
  }
  if (doubtful.length > 0) settle(doubtful, known, runs, ringOf);
  return Int32Array.from(ringOf, (ring) => known.get(ring)!);
}

type Longest = { readonly half: Half; readonly edge: number; readonly chord: number };

/** For each half the ring of halves that go round the same face with it; a ring is named by its first half. */
function ringsOf(runs: readonly Run[], fans: Fans): Int32Array {
  const after = new Int32Array(2 * runs.length);
  for (let half = 0; half < after.length; half++) after[half] = half;
  for (const fan of fans.values()) {
    for (let k = 0; k < fan.length; k++) after[fan[k]! ^ 1] = fan[(k + fan.length - 1) % fan.length]!;
  }
  const ringOf = new Int32Array(after.length).fill(-1);
  for (let first = 0; first < after.length; first++) {
    for (let half = first; ringOf[half] === -1; half = after[half]!) ringOf[half] = first;
  }
  return ringOf;
}

/** The number of each run's first edge, runs laid end to end. */
function firstEdges(runs: readonly Run[]): number[] {
  let count = 0;
  return runs.map((run) => {
    const first = count;
    count += run.edges.length;
    return first;
  });
}

function longestIn(run: Run, first: number): Longest {
  let chord = -1;
  let edge = first;
  for (let i = 0; i < run.edges.length; i++) {
    const { ax, ay, bx, by } = run.edges[i]!;
    const long = (bx - ax) ** 2 + (by - ay) ** 2;
    if (long > chord) [chord, edge] = [long, first + i];
  }
  return { half: 0, edge, chord };
}

/** The winding left of a half, tried at a few places of one edge; undefined where all of them are too near others. */
function leftOf(
  edges: readonly Edge[],
  index: Flatbush,
  edge: number,
  half: Half,
  weight: number,
): number | undefined {
  for (const share of [0.5, 0.31, 0.73]) {
    const { winding, doubtful } = windingBeside(edges, index, edge, share);
    if (!doubtful) return half % 2 === 0 ? winding : winding - weight;
  }
  return undefined;
}

/** Rings too thin to be looked at take their winding from across one of their edges. */
function settle(
  doubtful: readonly number[],
  known: Map<number, number>,
  runs: readonly Run[],
  ringOf: Int32Array,
) {
  for (let round = 0; round < doubtful.length && known.size > 0; round++) {
    for (let half = 0; half < ringOf.length; half++) {
      if (known.has(ringOf[half]!)) continue;
      const over = known.get(ringOf[half ^ 1]!);
      const step = half % 2 === 0 ? runs[half >> 1]!.weight : -runs[half >> 1]!.weight;
      if (over !== undefined) known.set(ringOf[half]!, over + step);
    }
    if (doubtful.every((ring) => known.has(ring))) return;
  }
  for (const ring of doubtful) if (!known.has(ring)) known.set(ring, 0);
}
