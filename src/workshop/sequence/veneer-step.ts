import { dimensionOf } from "../../order/spec.ts";
import type { Model } from "../model.ts";
import type { WorkStep } from "./work-step.ts";

/**
 * The step that glues a part's veneers on: when it is sawn, so that its guided cut trims them with the wood, and brings it to its whole thickness; none for
 * a part without. `after` is the step before.
 */
export function veneerStep(
  { spec }: Model,
  part: "body" | "wing-bass" | "wing-treble",
  after: string,
): WorkStep[] {
  const veneers = spec.veneers.filter(({ on }) => on === part);
  if (veneers.length === 0) return [];
  return [
    {
      ...{ id: `${part}.veneers`, part, at: "bench", datum: "back", square: "front, back", setUp: null },
      what: `Glue the ${part}'s veneers on, margins out: ${veneers.map(({ face }) => face).join(" and ")}; its edge's cut trims them`,
      thickness: dimensionOf(spec, `${part.replace("-", ".")}.thickness`),
      ...{ measure: "thickness", files: veneers.map(({ id }) => `veneer-${id}`) },
      needs: [
        { from: after, what: "the part, sawn outside its line" },
        { from: "bought", what: "veneers" },
      ],
    },
  ];
}

/** The step after which a part is ready for its edge to be cut. */
export function veneered({ spec }: Model, part: string, after: string): string {
  return spec.veneers.some(({ on }) => on === part) ? `${part}.veneers` : after;
}
