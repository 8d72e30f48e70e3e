import type { Point } from "../point.ts";
import { tolerance } from "../tolerance.ts";
import { type FairSpan, fairSpan } from "./fair-span.ts";
import type { Station, StationProblem } from "./station.ts";

/**
 * A fair curve: `spans` of continuous curvature, in order of travel. Between two spans stands a corner; `corners[i]` is
 * its rounding radius (mm, 0 sharp) at the end of span i, and is missing after the last span of an open curve. A closed
 * curve without corners is one closed span.
 */
export type FairCurve = {
  readonly closed: boolean;
  readonly spans: readonly FairSpan[];
  readonly corners: readonly number[];
};

/** A fair curve, or what stands in its way and at which station (counted from 0). */
export type FairOutcome =
  | { readonly kind: "ok"; readonly curve: FairCurve }
  | { readonly kind: "invalid"; readonly problem: StationProblem; readonly at: number };

/**
 * The fair curve through stations, in their order.
 *
 * Between corners it is a cubic spline interpolating the stations, twice continuously differentiable in a parameter
 * that is close to its own length: so curvature is continuous, and the curve is near the one that bends a thin batten
 * the least (see `fairSpan`). Two stations between corners give a straight line. A closed curve's last station leads
 * back to its first; one without corners needs three stations. Two stations running at the same place are `repeated`.
 */
export function fairCurve(stations: readonly Station[], options: { closed: boolean }): FairOutcome {
  const { closed } = options;
  const problem = stationProblem(stations, closed);
  if (problem) return problem;
  const breaks = stations.flatMap((s, i) => (s.corner !== undefined ? [i] : []));
  if (closed && breaks.length === 0) {
    return { kind: "ok", curve: { closed, spans: [fairSpan(stations, true)], corners: [] } };
  }
  const turned = closed ? [...stations.slice(breaks[0]), ...stations.slice(0, breaks[0]! + 1)] : stations;
  const spans: FairSpan[] = [];
  const corners: number[] = [];
  let from = 0;
  for (let i = 1; i < turned.length; i++) {
    const last = i === turned.length - 1;
    const corner = turned[i]!.corner;
    if (corner === undefined && !last) continue;
    spans.push(fairSpan(turned.slice(from, i + 1), false));
    if (!last || closed) corners.push(corner ?? 0);
    from = i;
  }
  return { kind: "ok", curve: { closed, spans, corners } };
}

function stationProblem(stations: readonly Station[], closed: boolean): FairOutcome | undefined {
  const bad = (problem: StationProblem, at: number): FairOutcome => ({ kind: "invalid", problem, at });
  const { length } = stations;
  const ids = new Set<string>();
  for (const [i, s] of stations.entries()) {
    const numbers = [s.x, s.y, s.corner ?? 0, s.arrive ?? 0, s.leave ?? 0];
    if (!numbers.every(Number.isFinite)) return bad("not-finite", i);
    if (numbers.some((n) => Math.abs(n) > tolerance.largest)) return bad("too-large", i);
    if ((s.corner ?? 0) < 0) return bad("negative-radius", i);
    const first = !closed && i === 0;
    const last = !closed && i === length - 1;
    const arriving = s.arrive !== undefined && (first || (s.corner === undefined && !last));
    const leaving = s.leave !== undefined && (last || (s.corner === undefined && !first));
    if (arriving || leaving) return bad("direction-on-smooth", i);
    if (s.id !== undefined && ids.has(s.id)) return bad("same-id", i);
    if (s.id !== undefined) ids.add(s.id);
  }
  const smooth = stations.every((s) => s.corner === undefined);
  if (length < (closed && smooth ? 3 : 2)) return bad("too-few", length);
  for (let i = closed ? 0 : 1; i < length; i++) {
    if (near(stations[i]!, stations.at(i - 1)!)) return bad("repeated", i);
  }
  return undefined;
}

function near(a: Point, b: Point): boolean {
  return Math.hypot(a.x - b.x, a.y - b.y) <= tolerance.exact;
}
