import { fromFrame } from "../../geometry/solid/frame.ts";
import { dimensionOf, type Spec } from "../../order/spec.ts";
import { coreAxes } from "../core/from-core.ts";
import type { Instrument } from "../instrument.ts";
import type { StrungInput } from "./strings.ts";

/** Every string's way, highest first: from where it leaves its post over nut and bridge to its exit from the tailpiece. */
export function strungOf(spec: Spec, made: Instrument): readonly StrungInput[] {
  const { nutSolidInput, layout, heights, exits, core } = made;
  const x = dimensionOf(spec, "string.length");
  const high = dimensionOf(spec, "tailpiece.height");
  return nutSolidInput.strings.map(({ diameter, at, to }, i) => {
    const bridge = { x, y: layout.bridge[i]!, z: heights.bridge[i]! };
    const exit = fromFrame(coreAxes(core), exits.along[i]!, exits.across[i]!, high);
    return { diameter, through: [to, at, bridge, exit] };
  });
}
