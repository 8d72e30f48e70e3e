import { extentsOf } from "../../geometry/measure.ts";
import type { Instrument } from "../../instrument/instrument.ts";
import { dimensionOf, type Spec } from "../../order/spec.ts";
import type { Leaf } from "../cut-list.ts";

/** The leaves of an instrument's veneers, cut with their margin all round; a mirrored pair is two, each half as wide; mm. */
export function leavesOf(spec: Spec, { fronts }: Instrument): Leaf[] {
  return spec.veneers.map(({ id, on, pair }): Leaf => {
    const margin = dimensionOf(spec, "veneer.margin");
    const { minX, maxX, minY, maxY } = extentsOf([fronts.find(({ part }) => part === on)!.path])!;
    const across = maxY - minY;
    return {
      ...{ veneer: id, part: on, length: maxX - minX + 2 * margin },
      width: pair === "mirrored" ? across / 2 + margin : across + 2 * margin,
      thickness: dimensionOf(spec, "veneer.thickness"),
      count: pair === "mirrored" ? 2 : 1,
    };
  });
}
