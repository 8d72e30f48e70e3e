import type { Point } from "../../geometry/point.ts";
import type { Wing } from "../../instrument/wing/wings.ts";
import { wingFixtures } from "../../order/fixture-names.ts";
import type { Side } from "../../order/side.ts";
import { dimensionOf, type Spec } from "../../order/spec.ts";
import { lazy } from "../../step/lazy.ts";
import type { Store } from "../../step/store.ts";
import { virtualCut } from "../virtual-cut/virtual-cut.ts";
import { baseFrame } from "./base-frame.ts";
import { bendsOf } from "./bends.ts";
import { chosenSetUp } from "./choose.ts";
import { cutRuns } from "./cut-runs.ts";
import { feedAlong } from "./feed.ts";
import type { Fixture } from "./fixture.ts";
import { grainLengths, grainStretches } from "./grain.ts";
import { guidedEdge } from "./guided-edge.ts";
import { handDistances } from "./hand-distances.ts";
import { holding, holdingSizes } from "./holding.ts";
import { keptOf } from "./kept.ts";
import { reachedStretches } from "./reached-stretches.ts";
import { runLength } from "./run-in.ts";
import { seenWing } from "./seen-outline.ts";
import { type SetUp, templateThickness } from "./set-up.ts";
import { sheetFor } from "./sheet-for.ts";

/** How deep a base is that nobody holds, mm: room for a batten and a clamp behind it. */
const heldDown = 160;

/** The fixture that a wing's cut edges are routed against, front up. Its outline must be there. */
export function wingFixture(side: Side, spec: Spec, wing: Wing, store: Store): Fixture {
  const of = (id: string) => dimensionOf(spec, id);
  if (wing.outline.kind !== "ok")
    throw new RangeError(`the ${side} wing has no outline: ${wing.outline.kind}`);
  const seen = seenWing(side, spec.hand, wing.outline, spec.wings![side].face);
  const [thickness, allowance] = [of(`wing.${side}.thickness`), of("saw.allowance")];
  const run = cutRuns(seen.path, seen.uses)[0]!;
  const { head, tail } = seen.joint;
  const frame = baseFrame(head, tail, middleOf(run.path.points));
  const hands = ({ machine, cutter, guide }: SetUp) =>
    machine.moves === "tool"
      ? null
      : runLength(guide.diameter) + cutter.diameter / 2 + handDistances.usual + holdingSizes.hand + 1;
  const { machines, cutters, guides, clamps, stock } = spec.shop;
  const made: Fixture = lazy<Fixture>({
    file: () => wingFixtures[side],
    part: () => `wing-${side}`,
    outline: () => seen.path,
    joined: () => [{ closed: false, points: [head, tail].map((at) => ({ ...at, bulge: 0 })) }],
    run: () => run,
    thickness: () => thickness,
    allowance: () => allowance,
    chosen: () => {
      const named = spec.fixtures[wingFixtures[side]] ?? { machine: null, cutter: null, guide: null };
      const wanted = { kind: "router" as const, thickness, allowance, ...bendsOf(run), named };
      return store.answer(chosenSetUp, { wanted, shop: { machines, cutters, guides } }).value;
    },
    setUp: () => (made.chosen.kind === "none" ? null : made.chosen.setUp),
    edge: () => {
      if (made.setUp === null) return null;
      const { cutter, guide } = made.setUp;
      const grip = hands(made.setUp);
      const reach = grip === null ? heldDown : grip + holdingSizes.hand + holdingSizes.rim;
      return store.answer(guidedEdge, {
        ...{ run, cutter: cutter.diameter, guide: guide.diameter, length: runLength(guide.diameter) },
        base: { way: frame.away, reach },
      }).value;
    },
    feed: () => {
      if (made.edge?.kind !== "ok") return null;
      const { machine, cutter, guide } = made.setUp!;
      return feedAlong(made.edge.edge, machine, guide.diameter / 2 + cutter.diameter / 2 + 4);
    },
    grain: () =>
      made.feed === null ? null : grainLengths(grainStretches(run.path, made.feed.way, { x: 1, y: 0 })),
    holding: () => {
      if (made.edge?.kind !== "ok") return null;
      const bevel = (wing.place.cut.bevel * Math.PI) / 180;
      return store.answer(holding, {
        ...{ frame, length: Math.hypot(tail.x - head.x, tail.y - head.y), led: made.edge.led, clamps },
        ...{ reach: reachOf(made.edge.template.points, frame), hands: hands(made.setUp!) },
        past: pastCutter(made.setUp!),
        back: Math.max(0, -thickness * Math.tan(bevel)),
        jointPins: wing.joint.pins.map(({ along }) => along),
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
        ...{ edge, template, guide: guide.diameter, cutter: cutter.diameter, joined: made.joined },
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

/** How far a template reaches away from the joined edge. */
function reachOf(points: readonly Point[], { origin, away }: ReturnType<typeof baseFrame>): number {
  return Math.max(...points.map(({ x, y }) => (x - origin.x) * away.x + (y - origin.y) * away.y));
}
