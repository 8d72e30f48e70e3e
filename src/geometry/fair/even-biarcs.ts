import { type BiarcStep, fewestBiarcs } from "./fewest-biarcs.ts";
import type { SpanNodes } from "./span-nodes.ts";

/** How much wider than the estimate the narrower limits are. */
const ROOM = 1.2;

/**
 * As many biarcs as given, but without a stump where each leg, from one pinned node to the next, ends: fewest arcs are
 * as long as they can be, and leave what is left over to the last. With narrower limits, by what the left-over of the
 * leg allows (an arc's reach goes with the cube root of its limit), all of the leg's arcs get somewhat shorter and keep
 * closer to the curve. The biarcs given stand where narrower limits would take more.
 */
export function evenBiarcs(
  nodes: SpanNodes,
  steps: readonly BiarcStep[],
  limits: Float64Array,
  closed: boolean,
  held: readonly [boolean, boolean],
): readonly BiarcStep[] {
  const legs = legsOf(nodes, steps);
  const narrower = limits.slice();
  for (const leg of legs) narrow(narrower, leg);
  if (narrower.every((limit, i) => limit === limits[i])) return steps;
  const second = fewestBiarcs(nodes, narrower, closed, held);
  if (second.length === steps.length) return second;
  for (const [i, leg] of legsOf(nodes, second).entries()) {
    if (leg.length > legs[i]!.length)
      narrower.set(limits.subarray(leg[0]!.from, leg.at(-1)!.to), leg[0]!.from);
  }
  const third = fewestBiarcs(nodes, narrower, closed, held);
  return third.length === steps.length ? third : steps;
}

function legsOf(nodes: SpanNodes, steps: readonly BiarcStep[]): BiarcStep[][] {
  const legs: BiarcStep[][] = [];
  for (const step of steps) {
    if (legs.length === 0 || nodes.pinned[step.from]) legs.push([]);
    legs.at(-1)!.push(step);
  }
  return legs;
}

/** Narrows the limits of a leg by what its steps could be shorter if they were all alike. */
function narrow(limits: Float64Array, leg: readonly BiarcStep[]): void {
  const reaches = leg.map(({ from, to }) => to - from).sort((a, b) => a - b);
  const usual = reaches[reaches.length >> 1]!;
  const whole = reaches.reduce((sum, reach) => sum + reach, 0);
  const share = Math.min(1, ROOM * (whole / (usual * leg.length)) ** 3);
  for (let i = leg[0]!.from; i < leg.at(-1)!.to; i++) limits[i]! *= share;
}
