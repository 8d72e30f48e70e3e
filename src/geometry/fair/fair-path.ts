import type { Path } from "../path.ts";
import { tolerance as tolerances } from "../tolerance.ts";
import type { FairCurve } from "./fair-curve.ts";
import type { MarkedPoint } from "./marked-point.ts";
import { roundCorner } from "./round-corner.ts";
import { spanArcs } from "./span-arcs.ts";

/**
 * A fair curve as a path of tangent arcs.
 *
 * `arcs` counts its lines and arcs, roundings too; `deviation` (mm) is the farthest that it strays from the curve,
 * roundings apart. `stations` gives for each named station the index of its vertex, in order of travel; those that a
 * rounding has taken away are `passed`. `unfit`: no arcs were found for a span, which has a cusp. `no-room`: no arc of
 * the corner's radius touches the curve on both sides; `corner` counts from the first span's end.
 */
export type FairPath =
  | {
      readonly kind: "ok";
      readonly path: Path;
      readonly arcs: number;
      readonly deviation: number;
      readonly stations: readonly { readonly id: string; readonly index: number }[];
      readonly passed: readonly string[];
    }
  | { readonly kind: "unfit"; readonly span: number }
  | { readonly kind: "no-room"; readonly corner: number }
  | { readonly kind: "invalid"; readonly problem: "tolerance" };

/**
 * Turns a fair curve into tangent lines and arcs within a tolerance (mm, positive), as few as it takes.
 *
 * Between corners each arc leaves in the direction in which the last arrived, by construction; the bulge is below 1. The
 * path runs as the curve does and starts at its first station, or where the rounding of that ends.
 */
export function fairPath(curve: FairCurve, options: { tolerance?: number } = {}): FairPath {
  const tolerance = options.tolerance ?? tolerances.fair;
  if (!(tolerance > 0 && Number.isFinite(tolerance))) return { kind: "invalid", problem: "tolerance" };
  const runs: (readonly MarkedPoint[])[] = [];
  let deviation = 0;
  for (const [i, span] of curve.spans.entries()) {
    const fit = spanArcs(span, tolerance);
    if (fit.kind === "unfit") return { kind: "unfit", span: i };
    runs.push(fit.points);
    deviation = Math.max(deviation, fit.deviation);
  }
  const passed: string[] = [];
  const rounded = new Set<number>();
  for (const [corner, radius] of curve.corners.entries()) {
    if (radius === 0) continue;
    const next = (corner + 1) % runs.length;
    const result = roundCorner(runs[corner]!, runs[next]!, radius);
    if (result.kind === "no-room") return { kind: "no-room", corner };
    if (result.kind === "smooth") continue;
    if (corner === next) {
      const both = roundOnly(runs[corner]!, result.before, result.after);
      if (!both) return { kind: "no-room", corner };
      runs[corner] = both;
    } else {
      runs[corner] = result.before;
      runs[next] = result.after;
    }
    passed.push(...result.passed);
    rounded.add(corner);
  }
  return { kind: "ok", ...joined(runs, rounded, curve.closed), deviation, passed };
}

/** A single run cut at both its ends by the rounding between them: nothing where the cuts leave no whole segment. */
function roundOnly(
  run: readonly MarkedPoint[],
  before: readonly MarkedPoint[],
  after: readonly MarkedPoint[],
): readonly MarkedPoint[] | undefined {
  const first = run.length - after.length;
  const cut = after[0] !== run[first];
  const rest = before.slice(cut ? first + 1 : first);
  if (rest.length < 2) return undefined;
  return cut ? [after[0]!, ...rest] : rest;
}

/** The runs end to end, the last vertex of each standing for the first of the next unless a rounding lies between. */
function joined(
  runs: readonly (readonly MarkedPoint[])[],
  rounded: ReadonlySet<number>,
  closed: boolean,
): { path: Path; arcs: number; stations: { id: string; index: number }[] } {
  const points: MarkedPoint[] = [];
  for (const [i, run] of runs.entries()) {
    const last = !closed && i === runs.length - 1;
    for (const point of last || rounded.has(i) ? run : run.slice(0, -1)) points.push(point);
  }
  const stations = points.flatMap(({ id }, index) => (id === undefined ? [] : [{ id, index }]));
  const path = { closed, points: points.map(({ x, y, bulge }) => ({ x, y, bulge })) };
  return { path, arcs: closed ? points.length : points.length - 1, stations };
}
