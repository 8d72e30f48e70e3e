import type { Point } from "../../geometry/point.ts";
import type { Spec } from "../../order/spec.ts";
import { lazy } from "../../step/lazy.ts";
import type { Store } from "../../step/store.ts";
import { virtualCut } from "../virtual-cut/virtual-cut.ts";
import { baseFrame, inBase } from "./base-frame.ts";
import { bendsOf } from "./bends.ts";
import { chosenSetUp } from "./choose.ts";
import { cutRuns } from "./cut-runs.ts";
import { wayAlong } from "./direction.ts";
import { feedAlong } from "./feed.ts";
import type { Fixture } from "./fixture.ts";
import { grainLengths, grainStretches } from "./grain.ts";
import { guidedEdge } from "./guided-edge.ts";
import type { GuidedWork } from "./guided-work.ts";
import { handDistances } from "./hand-distances.ts";
import { holding, holdingSizes } from "./holding.ts";
import { keptOf } from "./kept.ts";
import { reachedStretches } from "./reached-stretches.ts";
import { runLength } from "./run-in.ts";
import { type SetUp, templateThickness } from "./set-up.ts";
import { sheetFor } from "./sheet-for.ts";

/** How deep a base is that nobody holds, mm: room for a batten and a clamp behind it. */
const heldDown = 160;

/**
 * The fixture that a piece of work is cut in, with what the order names for it and what the spec's shop owns. Each getter is worked out when it is
 * asked for. Work without a run of cut edges throws.
 */
export function guidedFixture(work: GuidedWork, spec: Spec, store: Store): Fixture {
  const { file, part, up, outline, joined, thickness, allowance, held } = work;
  const { from, to } = work.base;
  const run = cutRuns(outline, work.uses)[0]!;
  const frame = baseFrame(from, to, middleOf(run.path.points));
  const hands = ({ machine, cutter, guide }: SetUp) =>
    machine.moves === "tool"
      ? null
      : runLength(guide.diameter) + cutter.diameter / 2 + handDistances.usual + holdingSizes.hand + 1;
  const { machines, cutters, guides, clamps, stock } = spec.shop;
  const made: Fixture = lazy<Fixture>({
    ...{ file: () => file, part: () => part, up: () => up, outline: () => outline, joined: () => joined },
    ...{ run: () => run, thickness: () => thickness, allowance: () => allowance, waste: () => work.waste },
    chosen: () => {
      const named = spec.fixtures[file] ?? { machine: null, cutter: null, guide: null };
      const wanted = { kind: work.kind, thickness, allowance, ...bendsOf(run), named };
      return store.answer(chosenSetUp, { wanted, shop: { machines, cutters, guides } }).value;
    },
    setUp: () => (made.chosen.kind === "none" ? null : made.chosen.setUp),
    edge: () => {
      if (made.setUp === null) return null;
      const { cutter, guide } = made.setUp;
      const grip = hands(made.setUp);
      const reach = grip === null ? heldDown : grip + holdingSizes.hand + holdingSizes.rim;
      return store.answer(guidedEdge, {
        ...{ run, cutter: cutter.diameter, guide: guide.diameter },
        length: runLength(guide.diameter) + work.waste,
        base: { way: frame.away, reach: reach - inBase(frame, run.path.points[0]!).h },
      }).value;
    },
    feed: () => {
      if (made.edge?.kind !== "ok") return null;
      const { machine, cutter, guide } = made.setUp!;
      return feedAlong(made.edge.edge, machine, guide.diameter / 2 + cutter.diameter / 2 + 4);
    },
    grain: () =>
      made.setUp === null
        ? null
        : grainLengths(grainStretches(run.path, wayAlong(made.setUp.machine.rotation), { x: 1, y: 0 })),
    holding: () => {
      if (made.edge?.kind !== "ok") return null;
      return store.answer(holding, {
        ...{ frame, length: Math.hypot(to.x - from.x, to.y - from.y), led: made.edge.led, clamps },
        ...{ reach: reachOf(made.edge.template.points, frame), hands: hands(made.setUp!) },
        ...{ past: pastCutter(made.setUp!), back: held.back, jointPins: held.jointPins },
      }).value;
    },
    kept: () => (made.holding === null ? [] : keptOf(made.holding, pastCutter(made.setUp!))),
    sheet: () => {
      if (made.edge?.kind !== "ok") return null;
      const { guide } = made.setUp!;
      const least = guide.kind === "bush" ? Math.max(templateThickness, guide.height + 1) : templateThickness;
      return store.answer(sheetFor, { template: made.edge.template, least, sheets: stock.sheets }).value;
    },
    cut: () => {
      if (made.edge?.kind !== "ok") return null;
      const { edge, template, places } = made.edge;
      const { cutter, guide } = made.setUp!;
      return store.answer(virtualCut, {
        ...{ edge, template, guide: guide.diameter, cutter: cutter.diameter, joined },
        cut: reachedStretches(run.path, places),
        kept: made.kept.map(({ id, path, margin }) => ({ id, path, margin })),
      }).value;
    },
  });
  return made;
}

/** How far a hand-held router's base reaches past its cutter, mm; 0 on other machines. */
function pastCutter({ machine, cutter }: SetUp): number {
  if (machine.kind !== "router" || machine.mount !== "hand") return 0;
  return Math.max(0, ((machine.base ?? 0) - cutter.diameter) / 2);
}

/** A place inside a run's bow: the middle of its points. */
function middleOf(points: readonly Point[]): Point {
  const sum = points.reduce((all, { x, y }) => ({ x: all.x + x, y: all.y + y }), { x: 0, y: 0 });
  return { x: sum.x / points.length, y: sum.y / points.length };
}

/** How far a template reaches away from the line that its base begins at. */
function reachOf(points: readonly Point[], { origin, away }: ReturnType<typeof baseFrame>): number {
  return Math.max(...points.map(({ x, y }) => (x - origin.x) * away.x + (y - origin.y) * away.y));
}
