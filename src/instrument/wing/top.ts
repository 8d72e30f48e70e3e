import { facet } from "../../geometry/facet.ts";
import type { Path } from "../../geometry/path.ts";
import type { Point } from "../../geometry/point.ts";
import { type Frame, fromFrame } from "../../geometry/solid/frame.ts";
import type { Vec3 } from "../../geometry/solid/vec3.ts";
import type { EdgeProfile } from "../../order/spec.ts";
import { step } from "../../step/step.ts";
import { coreAxes } from "../core/from-core.ts";
import { easedTop, type FinishedTop, fineTop } from "../eased-top.ts";
import { sign } from "./frame.ts";
import { placeOfWing, type WingPlaceInput } from "./place.ts";

/** A wing's front and how its edge is eased, mm; `from` and `to` are the stretch along the instrument that is asked for, from the nut. */
export type WingTopInput = {
  readonly place: WingPlaceInput;
  readonly path: Path;
  readonly profile: EdgeProfile;
  readonly arris: number;
  readonly from: number;
  readonly to: number;
};

/**
 * The finished surface of a wing as seen from over the strings, right-handed among the instrument's axes: its front inside the eased edge, and
 * the facets of that edge over the stretch asked for.
 */
export const wingTop = step("wing.top", 3, (given: WingTopInput): FinishedTop => {
  const points = facet(given.path, fineTop.chord).points;
  // The first edge is the joint, which is not eased.
  const corners = [...points.slice(1), points[0]!];
  return easedTop({ corners, closed: false, ...given }, placing(given.place));
});

/** Where a place of a wing's plane, `down` under its front, lies among the instrument's axes. */
function placing(input: WingPlaceInput): (place: Point, down: number) => Vec3 {
  const { frame } = placeOfWing(input);
  const core: Frame = coreAxes(input.core);
  return ({ x, y }, down) => {
    const at = fromFrame(frame, x, sign(input.side) * y, -down);
    return fromFrame(core, at.x, at.y, at.z);
  };
}
