import { underVeneers } from "../instrument/under-veneers.ts";
import type { Spec } from "../order/spec.ts";
import { type Dimension, length } from "./dimension.ts";

/** What is left for the wood of each part that gets veneers. */
export function veneerDimensions({ veneers }: Spec): Dimension[] {
  return [...new Set(veneers.map(({ on }) => on))].map((on) =>
    length(
      on,
      `${on.replace("-", ".")}.under-veneer`,
      `Thickness that the ${on}'s wood is planed to under its veneers`,
      ({ spec }) => {
        return underVeneers(spec, on);
      },
    ),
  );
}
