import type { Spec } from "../../order/spec.ts";
import type { StringHeights } from "./heights.ts";
import type { StringLayout } from "./layout.ts";

/** Where each string's centre passes the nut or the bridge, across and over z = 0, and how thick it is, mm. */
export function passing(
  spec: Spec,
  { layout, heights }: { readonly layout: StringLayout; readonly heights: StringHeights },
  where: "nut" | "bridge",
) {
  return spec.strings.map(({ diameter }, i) => ({ y: layout[where][i]!, z: heights[where][i]!, diameter }));
}
