import { offArc } from "../off-arc.ts";
import { tolerance as tolerances } from "../tolerance.ts";
import { evenBiarcs } from "./even-biarcs.ts";
import type { FairSpan } from "./fair-span.ts";
import { type BiarcStep, fewestBiarcs } from "./fewest-biarcs.ts";
import type { MarkedPoint } from "./marked-point.ts";
import { spanAt } from "./span-at.ts";
import { type SpanNodes, spanNodes } from "./span-nodes.ts";

/** The tangent arcs that stand for a span: its vertices from first to last, and how far (mm) they stray from it. */
export type SpanArcs =
  | { readonly kind: "ok"; readonly points: readonly MarkedPoint[]; readonly deviation: number }
  | { readonly kind: "unfit" };

/** Nodes are made denser by these factors until the arcs found keep to the tolerance everywhere. */
const DENSITIES = [1, 1, 2, 4];
/** Looks between two nodes when the arcs found are measured. */
const LOOKS = 4;

/**
 * The tangent arcs for a span, as few as `fewestBiarcs` finds within the tolerance (mm).
 *
 * What is found is measured between the nodes too; where it strays there, it is sought again with a narrower tolerance
 * and more nodes. `unfit` when that ends without arcs: a curve with a cusp, which only wild stations make. A span that is
 * straight within `tolerance.exact` gives one line from each named station to the next.
 */
export function spanArcs(span: FairSpan, tolerance: number): SpanArcs {
  let aim = tolerance;
  for (const density of DENSITIES) {
    const nodes = spanNodes(span, aim, density);
    const straight = straightPoints(span, nodes);
    if (straight) return { kind: "ok", points: straight, deviation: 0 };
    const limits = new Float64Array(nodes.count).fill(aim);
    const first = fewestBiarcs(nodes, limits, span.closed, span.held);
    if (first.length === 0) continue;
    const steps = evenBiarcs(nodes, first, limits, span.closed, span.held);
    let deviation = 0;
    for (const step of steps) deviation = Math.max(deviation, deviationOf(span, nodes, step));
    if (deviation <= tolerance) return { kind: "ok", points: pointsOf(span, nodes, steps), deviation };
    aim *= 0.999 * (tolerance / Math.max(deviation, tolerance));
  }
  return { kind: "unfit" };
}

function deviationOf(span: FairSpan, nodes: SpanNodes, step: BiarcStep): number {
  const { from, to, ax, ay, bx, by, biarc } = step;
  let worst = 0;
  for (let node = from; node < to; node++) {
    for (let look = 0; look < LOOKS; look++) {
      const at = nodes.at[node]! + (look / LOOKS) * (nodes.at[node + 1]! - nodes.at[node]!);
      const piece = Math.min(Math.floor(at), span.steps.length - 1);
      const { x, y } = spanAt(span, piece, at - piece);
      const first = (x - biarc.jointX) * biarc.acrossX + (y - biarc.jointY) * biarc.acrossY < 0;
      const off = first
        ? offArc(x - nodes.x[from]!, y - nodes.y[from]!, ax, ay, biarc.curvature0)
        : offArc(x - nodes.x[to]!, y - nodes.y[to]!, bx, by, biarc.curvature1);
      worst = Math.max(worst, Math.abs(off));
    }
  }
  return worst;
}

/** The vertices, a station's own place where it is an end point; a closed span's last vertex is its first again. */
function pointsOf(span: FairSpan, nodes: SpanNodes, steps: readonly BiarcStep[]): MarkedPoint[] {
  const points: MarkedPoint[] = [];
  for (const { from, biarc } of steps) {
    points.push({ ...placeAt(span, nodes, from), bulge: biarc.bulge0 });
    points.push({ x: biarc.jointX, y: biarc.jointY, bulge: biarc.bulge1 });
  }
  points.push({ ...placeAt(span, nodes, nodes.count - 1), bulge: 0 });
  return points;
}

function placeAt(span: FairSpan, nodes: SpanNodes, node: number): { x: number; y: number; id?: string } {
  const at = nodes.at[node]!;
  if (!nodes.pinned[node]) return { x: nodes.x[node]!, y: nodes.y[node]! };
  const { x, y, id } = span.stations[at % span.stations.length]!;
  return id === undefined ? { x, y } : { x, y, id };
}

/** The lines of a straight span from pinned node to pinned node; undefined if the span isn't straight. */
function straightPoints(span: FairSpan, nodes: SpanNodes): MarkedPoint[] | undefined {
  if (span.closed) return undefined;
  const first = span.stations[0]!;
  const last = span.stations.at(-1)!;
  const length = Math.hypot(last.x - first.x, last.y - first.y);
  if (length === 0) return undefined;
  const [ux, uy] = [(last.x - first.x) / length, (last.y - first.y) / length];
  const points: MarkedPoint[] = [];
  for (let i = 0; i < nodes.count; i++) {
    const aside = ux * (nodes.y[i]! - first.y) - uy * (nodes.x[i]! - first.x);
    const forward = ux * nodes.tx[i]! + uy * nodes.ty[i]!;
    if (Math.abs(aside) > tolerances.exact || forward <= 0) return undefined;
    if (nodes.pinned[i]) points.push({ ...placeAt(span, nodes, i), bulge: 0 });
  }
  return points;
}
