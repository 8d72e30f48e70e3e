import type { Wing } from "../../instrument/wing/wings.ts";
import { type Side, sides } from "../../order/side.ts";
import { dimensionOf } from "../../order/spec.ts";
import type { Model } from "../model.ts";
import { pilotOnly } from "./drill-jigs.ts";
import { drilling } from "./drill-plate.ts";
import { handOnly, type Jig, jigOf } from "./jig.ts";
import { jointGuide, jointGuideBox, jointGuideFoot, jointGuideKey } from "./joint-guide.ts";
import { type PrintRules, printed } from "./print-rules.ts";
import { wingAngleGauge, wingAngleSize } from "./wing-angle-gauge.ts";

/** For each wing a gauge for the angle between front and joint face, and a guide for its pins; none of a body in one piece. */
export function wingJigs(model: Model, rules: PrintRules): Jig[] {
  const { wings } = model.instrument;
  if (wings === null) return [];
  return sides.flatMap((side) => [
    angleGauge(model, rules, side, wings[side]),
    ...pinGuide(model, rules, side, wings[side]),
  ]);
}

/** Whether what is drawn of a treble wing of a right-hand order is turned over for this side of this order. */
export function isTurned(side: Side, hand: "right" | "left"): boolean {
  return (side === "bass") !== (hand === "left");
}

function angleGauge({ spec }: Model, rules: PrintRules, side: Side, { place, joint }: Wing): Jig {
  const angle = 90 - place.cut.bevel;
  const thickness = dimensionOf(spec, "gauge.thickness");
  const lines = [`${spec.order} ${side.toUpperCase()}`, `${angle.toFixed(2)} DEG`];
  const input = { angle, deep: joint.deep, thickness, lines };
  const { x, y } = wingAngleSize(input);
  return jigOf(
    {
      ...{ name: `wing-angle-${side}`, part: `wing-${side}`, along: { from: 0, to: x }, wide: y },
      ...{ high: thickness },
      what: `printed gauge for the angle between the ${side} wing's front and its joint face, held square to the joint line: it measures, and ${handOnly}`,
    },
    rules,
    wingAngleGauge,
    input,
  );
}

/** A guide for the pins of a wing that has any. */
function pinGuide({ spec }: Model, rules: PrintRules, side: Side, { place, outline, joint }: Wing): Jig[] {
  if (joint.pins.length === 0 || outline.kind !== "ok") return [];
  // From the joint line up the core's side to its front: that falls square to the front by the joint face's own way down.
  const fall = -joint.face.v.z;
  const [head, tail] = [joint.inside.head.front / fall, joint.inside.tail.front / fall];
  const turn = (place.cut.mitre * Math.PI) / 180;
  const [along, out] = outline.beside.head;
  const run =
    (along * Math.cos(turn) - out * Math.sin(turn)) / (along * Math.sin(turn) + out * Math.cos(turn));
  const input = {
    ...{ pins: joint.pins.map((pin) => ({ along: pin.along, down: pin.down })), deep: joint.deep },
    ...{ bevel: place.cut.bevel, core: { front: head, rise: (tail - head) / joint.length } },
    ...{ stop: Math.abs(run) <= 1 ? run : null, pilot: drilling.pilot + rules.growth },
    ...{ mirrored: isTurned(side, spec.hand), lines: [`${spec.order} ${side.toUpperCase()} JOINT`] },
  };
  const { from, to, top, low } = jointGuideBox(input);
  const radius = input.pilot / 2 + printed.wall;
  return [
    jigOf(
      {
        ...{
          name: `drill-joint-${side}`,
          part: `wing-${side}`,
          along: { from, to },
          wide: jointGuideFoot.wide,
        },
        ...{ high: top + low, key: jointGuideKey },
        uncut: [
          { from, to: radius },
          ...input.pins.map((pin) => ({ from: pin.along - radius, to: pin.along + radius })),
        ],
        what: `printed drill guide for the pins of the ${side} joint, one face for the wing, the other for the core: a fence on the front of either, the stop at the wing's head end, the notch on that end's line on the core; ${pilotOnly}: ${handOnly}`,
      },
      rules,
      jointGuide,
      input,
    ),
  ];
}
