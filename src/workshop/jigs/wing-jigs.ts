import { sides } from "../../order/side.ts";
import { dimensionOf } from "../../order/spec.ts";
import type { Model } from "../model.ts";
import { handOnly, type Jig, jigOf } from "./jig.ts";
import type { PrintRules } from "./print-rules.ts";
import { wingAngleGauge, wingAngleSize } from "./wing-angle-gauge.ts";

/** A gauge for each wing's angle between front and joint face; none of a body in one piece. */
export function wingJigs({ spec, instrument: { wings } }: Model, rules: PrintRules): Jig[] {
  if (wings === null) return [];
  return sides.map((side) => {
    const { place, joint } = wings[side];
    const angle = 90 - place.cut.bevel;
    const thickness = dimensionOf(spec, "gauge.thickness");
    const lines = [`${spec.order} ${side.toUpperCase()}`, `${angle.toFixed(2)} DEG`];
    const input = { angle, deep: joint.deep, thickness, lines };
    const { x, y } = wingAngleSize(input);
    return jigOf(
      {
        ...{
          name: `wing-angle-${side}`,
          part: `wing-${side}`,
          along: { from: 0, to: x },
          wide: y,
          high: thickness,
        },
        what: `printed gauge for the angle between the ${side} wing's front and its joint face, held square to the joint line: it measures, and ${handOnly}`,
      },
      rules,
      wingAngleGauge,
      input,
    );
  });
}
