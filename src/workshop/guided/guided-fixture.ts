import type { Spec } from "../../order/spec.ts";
import { lazy } from "../../step/lazy.ts";
import type { Store } from "../../step/store.ts";
import { virtualCut } from "../virtual-cut/virtual-cut.ts";
import { bendsOf } from "./bends.ts";
import { chosenSetUp } from "./choose.ts";
import type { CutRun } from "./cut-runs.ts";
import { wayAlong } from "./direction.ts";
import { feedAlong } from "./feed.ts";
import type { Fixture } from "./fixture.ts";
import { grainLengths, grainStretches } from "./grain.ts";
import { edgeInput, guidedBase } from "./guided-base.ts";
import { guidedEdge } from "./guided-edge.ts";
import type { GuidedWork } from "./guided-work.ts";
import { keptOf } from "./kept.ts";
import { pastCutter } from "./past-cutter.ts";
import { placedHolding } from "./placed-holding.ts";
import { reachedStretches } from "./reached-stretches.ts";
import { baseThickness, templateThickness } from "./set-up.ts";
import { sheetFor } from "./sheet-for.ts";

/**
 * The fixture that a piece of work is cut in, with what the order names for it and what the spec's shop owns. Each getter is worked out when it is
 * asked for. Work without a run of cut edges throws.
 */
export function guidedFixture(work: GuidedWork, spec: Spec, store: Store): Fixture {
  const { file, part, up, outline, joined, thickness, allowance, waste, held } = work;
  const base = guidedBase(work);
  const { run } = base;
  const { machines, cutters, guides, stock } = spec.shop;
  const edgeOf = (one: CutRun) =>
    made.setUp === null ? null : store.answer(guidedEdge, edgeInput(work, base, one, made.setUp)).value;
  const made: Fixture = lazy<Fixture>({
    ...{ file: () => file, part: () => part, up: () => up, outline: () => outline, joined: () => joined },
    ...{ run: () => run, thickness: () => thickness, allowance: () => allowance, waste: () => waste },
    template: () => spec.fixtures[file]?.template ?? "over",
    said: () => (held.by === "pins" ? held.said : []),
    chosen: () => {
      const { machine = null, cutter = null, guide = null } = spec.fixtures[file] ?? {};
      const named = { machine, cutter, guide };
      const wanted = { kind: work.kind, thickness, allowance, ...bendsOf(run), named };
      return store.answer(chosenSetUp, { wanted, shop: { machines, cutters, guides } }).value;
    },
    setUp: () => (made.chosen.kind === "none" ? null : made.chosen.setUp),
    edge: () => edgeOf(run),
    feed: () => {
      if (made.edge?.kind !== "ok") return null;
      const { machine, cutter, guide } = made.setUp!;
      return feedAlong(made.edge.edge, machine, guide.diameter / 2 + cutter.diameter / 2 + 4);
    },
    grain: () => (made.stretches === null ? null : grainLengths(made.stretches)),
    stretches: () =>
      made.setUp === null
        ? null
        : grainStretches(run.path, wayAlong(made.setUp.machine.rotation), { x: 1, y: 0 }),
    holding: () =>
      made.edge?.kind === "ok" ? placedHolding(work, base, made.setUp!, made.edge, spec, store) : null,
    kept: () => (made.holding === null ? [] : keptOf(made.holding, pastCutter(made.setUp!))),
    sheet: () => {
      if (made.edge?.kind !== "ok") return null;
      const { guide, machine } = made.setUp!;
      const { template } = made.edge;
      const glued = machine.kind === "shaper" ? { base: baseThickness } : {};
      const least = guide.kind === "bush" ? Math.max(templateThickness, guide.height + 1) : templateThickness;
      return store.answer(sheetFor, { template, least, sheets: stock.sheets, ...glued }).value;
    },
    cut: () => {
      if (made.edge?.kind !== "ok") return null;
      const { edge, template, places } = made.edge;
      const { cutter, guide } = made.setUp!;
      const second = work.again === null ? null : edgeOf(work.again);
      const left = second?.kind === "ok" ? second.places : [];
      return store.answer(virtualCut, {
        ...{ edge, template, guide: guide.diameter, cutter: cutter.diameter, joined },
        cut: [
          ...reachedStretches(run.path, places),
          ...(work.again === null ? [] : reachedStretches(work.again.path, left)),
        ],
        kept: made.kept.map(({ id, path, margin }) => ({ id, path, margin })),
      }).value;
    },
  });
  return made;
}
