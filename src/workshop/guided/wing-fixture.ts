import type { Wing } from "../../instrument/wing/wings.ts";
import { wingFixtures } from "../../order/fixture-names.ts";
import type { Side } from "../../order/side.ts";
import { dimensionOf, type Spec } from "../../order/spec.ts";
import type { Store } from "../../step/store.ts";
import type { Fixture } from "./fixture.ts";
import { guidedFixture } from "./guided-fixture.ts";
import type { GuidedWork } from "./guided-work.ts";
import { lessAgainst } from "./less-against.ts";
import { type FaceUp, seenWing } from "./seen-outline.ts";

/**
 * The fixture that a wing's cut edges are routed against. Its outline must be there. The front is up, unless so much more is cut against the
 * grain then: turned over, what was against is cut with it.
 */
export function wingFixture(side: Side, spec: Spec, wing: Wing, store: Store): Fixture {
  const of = (up: FaceUp) => guidedFixture(wingWork(side, spec, wing, up), spec, store);
  return lessAgainst(of("front"), () => of("back"));
}

/** A wing with a face up: all but its joint is cut, the base begins at the joint line, the joint lies against a batten. */
function wingWork(side: Side, spec: Spec, wing: Wing, up: FaceUp): GuidedWork {
  const of = (id: string) => dimensionOf(spec, id);
  if (wing.outline.kind !== "ok")
    throw new RangeError(`the ${side} wing has no outline: ${wing.outline.kind}`);
  const seen = seenWing(side, spec.hand, up, wing.outline, spec.wings![side].face);
  const { head, tail } = seen.joint;
  const thickness = of(`wing.${side}.thickness`);
  const bevel = (wing.place.cut.bevel * Math.PI) / 180;
  return {
    ...{ file: wingFixtures[side], part: `wing-${side}`, kind: "router", up },
    ...{ outline: seen.path, uses: seen.uses, thickness, allowance: of("saw.allowance") },
    ...{ base: { from: head, to: tail }, waste: [0, 0], again: null },
    joined: [{ closed: false, points: [head, tail].map((at) => ({ ...at, bulge: 0 })) }],
    held: {
      ...{ by: "batten", back: Math.max(0, -thickness * Math.tan(bevel)) },
      jointPins: wing.joint.pins.map(({ along }) => along),
    },
  };
}
