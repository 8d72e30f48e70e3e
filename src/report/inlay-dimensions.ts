import { madeInlays } from "../instrument/fingerboard/inlays.ts";
import type { Spec } from "../order/spec.ts";
import { type Dimension, length } from "./dimension.ts";

/** The inlays' numbers; none for a design without. */
export function inlayDimensions({ inlays }: Spec): Dimension[] {
  return inlays.map(({ id }, i) =>
    length(
      "fingerboard",
      `inlay.${id}.unreached`,
      `Inlay ${id}: depth that its cutter leaves, at most`,
      (model) => {
        return madeInlays(model.instrument)[i]!.unreached;
      },
    ),
  );
}
