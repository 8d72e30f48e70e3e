import { dimensionOf, type Spec } from "../../order/spec.ts";
import type { Getters } from "../../step/lazy.ts";
import type { Store } from "../../step/store.ts";
import { type Inlay, inlayOf } from "./inlay.ts";
import type { BoardSurface } from "./surface.ts";

/** The board's inlays, in the design's order; mm. None on a design without. */
export type Inlays = { readonly inlays: readonly Inlay[] };

/** How the inlays are worked out; the board's surface is asked only then. */
export function inlayGetters(
  spec: Spec,
  store: Store,
  made: () => { readonly surface: BoardSurface },
): Getters<Inlays> {
  const of = (id: string) => dimensionOf(spec, id);
  return {
    inlays: () =>
      spec.inlays.map((inlay) => {
        const [cutter, clearance, depth] = [of("inlay.cutter"), of("inlay.clearance"), of("inlay.depth")];
        return store.answer(inlayOf, { board: made().surface, inlay, cutter, clearance, depth }).value;
      }),
  };
}

/** The inlays of a model that contradictions found nothing wrong with; throws at one that can't be made. */
export function madeInlays({ inlays }: Inlays) {
  return inlays.map((inlay) => {
    if (inlay.kind !== "ok") throw new RangeError(`the inlay ${inlay.id} can't be made: ${inlay.kind}`);
    return inlay;
  });
}
