import type { OwnPlaces, Spec } from "../../order/spec.ts";
import type { Store } from "../../step/store.ts";
import { type GuidedBase, handsAt, highestOf } from "./guided-base.ts";
import type { GuidedEdge } from "./guided-edge.ts";
import type { GuidedWork } from "./guided-work.ts";
import { type Holding, holding } from "./holding.ts";
import { withOwnPlaces } from "./own-places.ts";
import { pastCutter } from "./past-cutter.ts";
import { pinnedHolding } from "./pinned.ts";
import type { SetUp } from "./set-up.ts";

/** What holds some work on its template, with the places that the order gives for clamps and handholds where it gives any. */
export function placedHolding(
  work: GuidedWork,
  base: GuidedBase,
  setUp: SetUp,
  edge: Extract<GuidedEdge, { kind: "ok" }>,
  { shop: { clamps }, fixtures }: Pick<Spec, "shop" | "fixtures">,
  store: Store,
): Holding {
  const { held } = work;
  const { frame, inside } = base;
  const usual = {
    ...{ led: edge.led, reach: highestOf(edge.template.points, frame) },
    ...{ hands: handsAt(work, base, setUp), past: pastCutter(setUp) },
  };
  const own: OwnPlaces = fixtures[work.file] ?? {};
  const placed = () => {
    if (held.by === "pins") {
      const { pins, screws, screw, wanted, marks } = held;
      const pressing = held.clamps ? clamps : [];
      return store.answer(pinnedHolding, {
        ...{ ...usual, base: work.base, inside, pins, screws, screw, wanted, marks, clamps: pressing },
      }).value;
    }
    const { from, to } = work.base;
    const length = Math.hypot(to.x - from.x, to.y - from.y);
    const { back, jointPins } = held;
    return store.answer(holding, { ...usual, frame, length, clamps, back, jointPins }).value;
  };
  const asked = own.clamps !== undefined || own.handholds !== undefined;
  return asked ? withOwnPlaces(placed(), frame, own, clamps) : placed();
}
