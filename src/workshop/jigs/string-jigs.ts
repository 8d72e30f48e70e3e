import { segmentsOf } from "../../geometry/segment.ts";
import { dimensionOf } from "../../order/spec.ts";
import type { Model } from "../model.ts";
import { handOnly, type Jig, jigOf } from "./jig.ts";
import { type NotchGaugeInput, notchGauge, notchGaugeBox } from "./notch-gauge.ts";
import { type PrintRules, printed } from "./print-rules.ts";

/** How far the nut's gauge reaches down beside the nut, and how wide its legs are, mm (G). */
const leg = { down: 4, wide: 5 };

/** The gauges that the strings' places on nut and bridge are marked by. */
export function stringJigs(model: Model, rules: PrintRules): Jig[] {
  return [nutNotches(model, rules), bridgeNotches(model, rules)];
}

/** Which side lies where, for whoever reads the letters: they aren't turned over with the edge. */
function sidesLine({ spec: { hand } }: Model): string {
  return hand === "right" ? "BASS - TREBLE" : "TREBLE - BASS";
}

type Own = Omit<NotchGaugeInput, "thickness" | "mirrored" | "piece">;

function nutNotches(model: Model, rules: PrintRules): Jig {
  const { layout, taper } = model.instrument;
  const half = taper.nut / 2 + printed.clearance.slide;
  return notches(model, rules, "nut", "its legs down beside the nut", {
    ...{ strings: layout.nut, crown: null, ends: { treble: half, bass: -half } },
    ...{ legs: leg.down, beyond: leg.wide },
    lines: [`${model.spec.order} NUT`, `SPREAD ${layout.nutSpread.toFixed(2)}`, sidesLine(model)],
  });
}

function bridgeNotches(model: Model, rules: PrintRules): Jig {
  const { layout, crownFace } = model.instrument;
  const [crown] = segmentsOf({ closed: false, points: crownFace.smooth });
  if (crown?.kind !== "arc") throw new RangeError("the bridge's crown is no arc");
  return notches(model, rules, "bridge", "its ends flush with the crown's", {
    ...{ strings: layout.bridge, crown: { radius: crown.radius, middle: crown.centre.x } },
    ...{ ends: { treble: crown.from.x, bass: crown.to.x }, legs: 0, beyond: 0 },
    lines: [`${model.spec.order} BRIDGE`, `SPREAD ${layout.bridgeSpread.toFixed(2)}`, sidesLine(model)],
  });
}

function notches(model: Model, rules: PrintRules, part: "nut" | "bridge", how: string, own: Own): Jig {
  const { spec } = model;
  const thickness = dimensionOf(spec, "gauge.thickness");
  const input = { ...own, thickness, mirrored: spec.hand === "left" };
  const { treble, bass, low, top } = notchGaugeBox(input);
  return jigOf(
    {
      ...{
        name: `notches-${part}`,
        part,
        along: { from: bass, to: treble },
        wide: top - low,
        high: thickness,
      },
      what: `printed gauge with a notch at each string's place on the ${part}, set on its top with ${how}: it is for marking, and ${handOnly}`,
    },
    rules,
    notchGauge,
    input,
  );
}
