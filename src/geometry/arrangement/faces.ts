import type Flatbush from "flatbush";
import type { Edge } from "./edge.ts";
import type { Fans } from "./fan.ts";
import type { Run } from "./runs.ts";
import { settledFans } from "./settled-fans.ts";
import { windingBeside } from "./winding.ts";

/** The windings of an arrangement's faces, and its fans with their order settled by them. */
export type Faces = { readonly fans: Fans; readonly windings: Int32Array };

/**
 * The winding to the left of each half of each run. It is the same for each ring of halves round a face, so that
 * whatever is kept by it closes: at a vertex, the windings of the sectors between the edges are those of rings. Each
 * run is looked at by itself, and a ring has the winding that most of its length was found to have.
 */
export function facesOf(runs: readonly Run[], fans: Fans, edges: readonly Edge[], index: Flatbush): Faces {
  const lengths: number[] = [];
  const lefts: (number | undefined)[] = [];
  let first = 0;
  for (const run of runs) {
    const { edge, length } = longestIn(run, first);
    first += run.edges.length;
    lengths.push(length);
    lefts.push(leftOf(edges, index, edge));
  }
  const settled = settledFans(fans, runs, lefts);
  const ringOf = ringsOf(runs, settled);
  const votes = new Map<number, Map<number, number>>();
  runs.forEach((run, k) => {
    const left = lefts[k];
    if (left === undefined) return;
    vote(votes, ringOf[2 * k]!, left, lengths[k]!);
    vote(votes, ringOf[2 * k + 1]!, left - run.weight, lengths[k]!);
  });
  const known = new Map<number, number>();
  for (const [ring, found] of votes) known.set(ring, mostOf(found));
  spread(known, runs, ringOf);
  return { fans: settled, windings: Int32Array.from(ringOf, (ring) => known.get(ring) ?? 0) };
}

function vote(votes: Map<number, Map<number, number>>, ring: number, winding: number, length: number) {
  const found = votes.get(ring);
  if (found === undefined) votes.set(ring, new Map([[winding, length]]));
  else found.set(winding, (found.get(winding) ?? 0) + length);
}

function mostOf(found: ReadonlyMap<number, number>): number {
  let [best, most] = [0, -1];
  for (const [winding, length] of found) if (length > most) [best, most] = [winding, length];
  return best;
}

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

/** The number of a run's longest edge, counted on from `first`, and the length of the run's chords together. */
function longestIn(run: Run, first: number): { readonly edge: number; readonly length: number } {
  let [longest, edge, length] = [-1, first, 0];
  for (let i = 0; i < run.edges.length; i++) {
    const { ax, ay, bx, by } = run.edges[i]!;
    const chord = Math.sqrt((bx - ax) ** 2 + (by - ay) ** 2);
    length += chord;
    if (chord > longest) [longest, edge] = [chord, first + i];
  }
  return { edge, length };
}

/** The winding left of an edge, tried at a few places of it; undefined where all of them are too near others. */
function leftOf(edges: readonly Edge[], index: Flatbush, edge: number): number | undefined {
  for (const share of [0.5, 0.31, 0.73]) {
    const { winding, doubtful } = windingBeside(edges, index, edge, share);
    if (!doubtful) return winding;
  }
  return undefined;
}

/** Rings too thin to be looked at take their winding from across one of their edges. */
function spread(known: Map<number, number>, runs: readonly Run[], ringOf: Int32Array) {
  let before = -1;
  while (known.size !== before) {
    before = known.size;
    for (let half = 0; half < ringOf.length; half++) {
      if (known.has(ringOf[half]!)) continue;
      const over = known.get(ringOf[half ^ 1]!);
      const step = half % 2 === 0 ? runs[half >> 1]!.weight : -runs[half >> 1]!.weight;
      if (over !== undefined) known.set(ringOf[half]!, over + step);
    }
  }
}
