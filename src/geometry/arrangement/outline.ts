import type { Arrangement } from "./arrange.ts";
import type { Edge } from "./edge.ts";
import type { Fans, Half } from "./fan.ts";
import type { Run } from "./runs.ts";
import { reversedEdge } from "./subedge.ts";

/** A closed loop of edges with what is kept on its left. */
export type Loop = readonly Edge[];

/**
 * The loops round that part of an arrangement whose winding is `inside`, with it on their left. Loops touch others and
 * themselves at most at junctions, and then they are parted there.
 */
export function outlinesWhere(
  { runs, fans, windings }: Arrangement,
  inside: (winding: number) => boolean,
): Loop[] {
  const kept = new Set<Half>();
  for (let half = 0; half < windings.length; half++)
    if (inside(windings[half]!) && !inside(windings[half ^ 1]!)) kept.add(half);
  const loops: Loop[] = [];
  for (const first of kept) {
    const trail: Half[] = [];
    for (let half: Half | undefined = first; half !== undefined && kept.delete(half); ) {
      trail.push(half);
      half = following(half, runs, fans, kept, first);
    }
    for (const part of partedAtVertices(trail, runs))
      loops.push(part.length === 1 ? edgesOf(part[0]!, runs) : part.flatMap((half) => edgesOf(half, runs)));
  }
  return loops;
}

/** The kept half after a half: the first one clockwise from the way back, so that the face to the left stays one. */
function following(
  half: Half,
  runs: readonly Run[],
  fans: Fans,
  kept: ReadonlySet<Half>,
  first: Half,
): Half | undefined {
  const fan = fans.get(headOf(half, runs));
  if (fan === undefined) return undefined;
  const back = fan.indexOf(half ^ 1);
  for (let step = 1; step <= fan.length; step++) {
    const candidate = fan[(back - step + fan.length) % fan.length]!;
    if (candidate === first) return undefined;
    if (kept.has(candidate)) return candidate;
  }
  return undefined;
}

function headOf(half: Half, runs: readonly Run[]): number {
  const run = runs[half >> 1]!;
  return half % 2 === 0 ? run.to : run.from;
}

/** Parts a trail that comes to one vertex twice into loops that do not. */
function partedAtVertices(trail: readonly Half[], runs: readonly Run[]): Half[][] {
  if (trail.length < 2) return [[...trail]];
  const loops: Half[][] = [];
  const open: Half[] = [];
  const depth = new Map<number, number>();
  for (const half of trail) {
    const tail = headOf(half ^ 1, runs);
    if (open.length === 0) depth.set(tail, 0);
    open.push(half);
    const head = headOf(half, runs);
    const back = depth.get(head);
    if (back === undefined) {
      depth.set(head, open.length);
      continue;
    }
    const loop = open.splice(back);
    for (const gone of loop) if (headOf(gone, runs) !== head) depth.delete(headOf(gone, runs));
    loops.push(loop);
  }
  return loops;
}

function edgesOf(half: Half, runs: readonly Run[]): readonly Edge[] {
  const { edges } = runs[half >> 1]!;
  return half % 2 === 0 ? edges : edges.toReversed().map(reversedEdge);
}
