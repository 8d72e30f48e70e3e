import { offArc } from "../off-arc.ts";
import { type Biarc, biarcBetween, noBiarc } from "./biarc.ts";
import type { SpanNodes } from "./span-nodes.ts";

/** A biarc of a fit from node `from` to node `to`, with the unit directions at its ends. */
export type BiarcStep = {
  readonly from: number;
  readonly to: number;
  readonly ax: number;
  readonly ay: number;
  readonly bx: number;
  readonly by: number;
  readonly biarc: Readonly<Biarc>;
};

/** Shares of the lean that a tangent may take; the first is the curve's own direction. */
const LEANS = [0, 0.3, 0.6, 0.9, 1.2];
/** Where the joint may lie: the tangent lengths' ratio over that of the ways to the middle node. */
const RATIOS = [1, 0.8, 1.25];
/** How far ahead, in nodes, a biarc is looked for: 2.75 arcs. */
const AHEAD = 40;
/** How many nodes behind the farthest reach a chain is still followed. */
const BEHIND = 6;

/**
 * The fewest biarcs, end to end and tangent, that follow the nodes of a span; none where even neighbouring nodes can't be
 * joined. `limits` says for each node how far (mm) a biarc that starts there may stray.
 *
 * A shortest path over the feasible biarcs between nodes (Drysdale, Rote and Sturm, *Approximation of an open polygonal
 * curve with a minimum number of circular arcs and biarcs*, Computational Geometry 41, 2008), breadth first: what k
 * biarcs can reach, then k + 1. The tangent at a node is not bound to the curve's: it may lean (see `spanNodes`), which
 * saves a quarter of the arcs. Fewest among the nodes, leans and ratios tried, following chains that are at most a few
 * nodes behind the best. A closed span is tried for each lean of its first node, until one takes no more than
 * an open span would.
 */
export function fewestBiarcs(
  nodes: SpanNodes,
  limits: Float64Array,
  closed: boolean,
  held: readonly [boolean, boolean],
): readonly BiarcStep[] {
  const all = LEANS.map((_, lean) => lean);
  if (!closed) return search(nodes, limits, held[0] ? [0] : all, held[1] ? [0] : all);
  const least = search(nodes, limits, all, all).length;
  let best: readonly BiarcStep[] = [];
  for (const lean of all) {
    const steps = search(nodes, limits, [lean], [lean]);
    if (steps.length === least) return steps;
    if (best.length === 0 || (steps.length > 0 && steps.length < best.length)) best = steps;
  }
  return best;
}

function search(
  nodes: SpanNodes,
  limits: Float64Array,
  starts: readonly number[],
  ends: readonly number[],
): readonly BiarcStep[] {
  const leans = LEANS.length;
  const last = nodes.count - 1;
  const { ux, uy } = tangents(nodes);
  const reached: (BiarcStep | "start" | undefined)[] = new Array(nodes.count * leans).fill(undefined);
  const cameFrom = new Int32Array(nodes.count * leans);
  const scratch = noBiarc();
  for (const lean of starts) reached[lean] = "start";
  let layer: number[] = [...starts];
  while (layer.length > 0) {
    const next: number[] = [];
    let far = 0;
    for (const state of layer) {
      const from = Math.floor(state / leans);
      for (let to = limit(nodes, from); to > from && to >= far - BEHIND; to -= 2) {
        for (const lean of to === last ? ends : LEANS.keys()) {
          const target = to * leans + lean;
          if (reached[target] !== undefined) continue;
          const ax = ux[state]!;
          const ay = uy[state]!;
          const bx = ux[target]!;
          const by = uy[target]!;
          const biarc = within(nodes, from, to, ax, ay, bx, by, limits[from]!, scratch);
          if (!biarc) continue;
          reached[target] = { from, to, ax, ay, bx, by, biarc };
          cameFrom[target] = state;
          next.push(target);
          far = Math.max(far, to);
        }
      }
    }
    if (far === last) return chain(reached, cameFrom, next.find((s) => s >= last * leans)!);
    layer = next.filter((s) => s >= (far - BEHIND) * leans).sort((a, b) => b - a);
  }
  return [];
}

/** The farthest node that a biarc from `from` may end at: not past a pinned one. */
function limit(nodes: SpanNodes, from: number): number {
  const most = Math.min(nodes.count - 1, from + AHEAD);
  let to = from + 2;
  while (to < most && !nodes.pinned[to]) to += 2;
  return to;
}

/** The leaned tangents, at node × leans + lean. */
function tangents(nodes: SpanNodes): { ux: Float64Array; uy: Float64Array } {
  const leans = LEANS.length;
  const ux = new Float64Array(nodes.count * leans);
  const uy = new Float64Array(nodes.count * leans);
  const { tx, ty, lean } = nodes;
  for (let i = 0; i < nodes.count; i += 2) {
    for (let k = 0; k < leans; k++) {
      const c = Math.cos(lean[i]! * LEANS[k]!);
      const s = Math.sin(lean[i]! * LEANS[k]!);
      ux[i * leans + k] = tx[i]! * c - ty[i]! * s;
      uy[i * leans + k] = ty[i]! * c + tx[i]! * s;
    }
  }
  return { ux, uy };
}

function chain(
  reached: readonly (BiarcStep | "start" | undefined)[],
  cameFrom: Int32Array,
  end: number,
): BiarcStep[] {
  const steps: BiarcStep[] = [];
  let state = end;
  for (let step = reached[state]; step !== undefined && step !== "start"; step = reached[state]) {
    steps.push(step);
    state = cameFrom[state]!;
  }
  return steps.reverse();
}

/** A biarc that strays at one ratio by more than this many tolerances isn't tried at the others. */
const HOPELESS = 4;

/** The first biarc between two nodes, of those tried, that stays within the tolerance at every node between. */
function within(
  nodes: SpanNodes,
  i: number,
  j: number,
  ax: number,
  ay: number,
  bx: number,
  by: number,
  tolerance: number,
  scratch: Biarc,
): Biarc | undefined {
  const px = nodes.x[i]!;
  const py = nodes.y[i]!;
  const qx = nodes.x[j]!;
  const qy = nodes.y[j]!;
  const middle = (i + j) >> 1;
  const mx = nodes.x[middle]!;
  const my = nodes.y[middle]!;
  const before = (mx - px) * (mx - px) + (my - py) * (my - py);
  const after = (qx - mx) * (qx - mx) + (qy - my) * (qy - my);
  const even = Math.sqrt(before / after);
  for (const ratio of RATIOS) {
    if (!biarcBetween(px, py, ax, ay, qx, qy, bx, by, ratio * even, scratch)) return undefined;
    const off = straying(nodes, i, j, ax, ay, bx, by, tolerance, scratch);
    if (off <= tolerance) return { ...scratch };
    if (off > HOPELESS * tolerance) return undefined;
  }
  return undefined;
}

/**
 * How far a biarc strays from the nodes between two, or from the first that is beyond the tolerance: looking
 * first at the four where it strays most as a rule.
 */
function straying(
  nodes: SpanNodes,
  i: number,
  j: number,
  ax: number,
  ay: number,
  bx: number,
  by: number,
  tolerance: number,
  biarc: Readonly<Biarc>,
): number {
  const { x, y } = nodes;
  const { jointX, jointY, acrossX, acrossY, curvature0, curvature1 } = biarc;
  const px = x[i]!;
  const py = y[i]!;
  const qx = x[j]!;
  const qy = y[j]!;
  const edge = Math.max(1, Math.round((j - i) * 0.11));
  const stride = Math.max(1, Math.round((j - i) * 0.26));
  let worst = 0;
  for (let pass = 0; pass < 2; pass++) {
    const step = pass === 0 ? stride : 1;
    for (let k = pass === 0 ? i + edge : i + 1; k < j; k += step) {
      const sx = x[k]!;
      const sy = y[k]!;
      const first = (sx - jointX) * acrossX + (sy - jointY) * acrossY < 0;
      const off = first
        ? offArc(sx - px, sy - py, ax, ay, curvature0)
        : offArc(sx - qx, sy - qy, bx, by, curvature1);
      const size = Math.abs(off);
      if (!(size <= tolerance)) return Number.isNaN(size) ? Number.POSITIVE_INFINITY : size;
      if (size > worst) worst = size;
    }
  }
  return worst;
}
