import { facet } from "../../geometry/facet.ts";
import { fromFrame } from "../../geometry/solid/frame.ts";
import type { Vec3 } from "../../geometry/solid/vec3.ts";
import type { Side } from "../../order/side.ts";
import { step } from "../../step/step.ts";
import { coreAxes } from "../core/from-core.ts";
import { easedTop, type FinishedTop, fineTop, stripsWhere } from "../eased-top.ts";
import type { BodySolidInput } from "./solid.ts";

/** A body's front and its eased edge, mm; `from` and `to` are the stretch along the instrument that is asked for, from the nut. */
export type BodyTopInput = Pick<BodySolidInput, "core" | "path" | "drop" | "arris"> & {
  readonly profile: BodySolidInput["profile"]["front"];
  readonly from: number;
  readonly to: number;
};

/**
 * The finished surface of a body as seen from over the strings, right-handed among the instrument's axes: its front inside the eased edge, as if the
 * core's room in it were filled, and the facets of that edge over the stretch asked for; of these for either side what lies on it.
 */
export const bodyTop = step(
  "body.top",
  2,
  (given: BodyTopInput): { readonly [side in Side]: FinishedTop } => {
    const axes = coreAxes(given.core);
    const corners = facet(given.path, fineTop.chord).points;
    const { flat, strips } = easedTop({ corners, closed: true, ...given }, ({ x, y }, down) =>
      fromFrame(axes, x, y, -given.drop - down),
    );
    const beside = (s: 1 | -1) => {
      const wanted = (facet: readonly Vec3[]) => facet.some(({ y }) => s * y > 0);
      return { flat, strips: strips.flatMap((strip) => stripsWhere(strip, wanted)) };
    };
    return { bass: beside(-1), treble: beside(1) };
  },
);
