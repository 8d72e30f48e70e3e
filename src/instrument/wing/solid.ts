import { mirrored } from "../../geometry/mirror.ts";
import type { Path } from "../../geometry/path.ts";
import { rectangle } from "../../geometry/rectangle.ts";
import { bore } from "../../geometry/solid/bore.ts";
import { type Frame, upright } from "../../geometry/solid/frame.ts";
import type { Solid } from "../../geometry/solid/solid.ts";
import { between, cross, dot, type Vec3 } from "../../geometry/solid/vec3.ts";
import type { EdgeProfile } from "../../order/spec.ts";
import { step } from "../../step/step.ts";
import { coreAxes } from "../core/from-core.ts";
import { easedEdge } from "../eased-edge.ts";
import { lessSunken, type Sunken } from "../sunken.ts";
import type { WingJoint } from "./joint.ts";
import { placeOfWing, type WingPlace, type WingPlaceInput } from "./place.ts";

/** What a wing's solid follows from; mm. `over` is its outline, led on past the joint; `reach` is more than the wing is long. */
export type WingSolidInput = {
  readonly over: Path;
  readonly thickness: number;
  readonly arris: number;
  readonly profile: { readonly front: EdgeProfile; readonly back: EdgeProfile };
  readonly place: WingPlaceInput;
  readonly pins: readonly Pick<WingJoint["pins"][number], "at">[];
  readonly pin: { readonly diameter: number; readonly depth: number };
  readonly reach: number;
  readonly sunken: Sunken;
};

/** How far outside the joint face a pin's cutter begins, mm. */
const clear = 1;

/** The finished wing as it stands on the instrument: its outline raised, its edges eased, cut off at the joint face and bored for the pins, less what is sunk into it. */
export const wingSolid = step("wing.solid", 2, (given: WingSolidInput): Solid => {
  const place = placeOfWing(given.place);
  return {
    kind: "place",
    solid: { kind: "place", solid: flatWing(given, place), frame: place.frame },
    frame: coreAxes(given.place.core),
  };
});

/** The wing in its own axes: u and v in its front, w out of it. */
function flatWing(given: WingSolidInput, place: WingPlace): Solid {
  const { over, thickness, arris, profile, pins, pin, reach } = given;
  const front = easedEdge(profile.front, arris);
  const back = easedEdge(profile.back, arris);
  const raised: Solid = {
    kind: "extrude",
    outlines: [{ outer: given.place.side === "bass" ? mirrored(over, "y") : over, holes: [] }],
    ...{ base: -thickness, height: thickness },
    ...(front && { top: front }),
    ...(back && { bottom: back }),
  };
  const own = (v: Vec3): Vec3 => ({
    x: dot(v, place.frame.u),
    y: dot(v, place.frame.v),
    z: dot(v, place.frame.w),
  });
  const inward = own({ x: -place.joint.normal.x, y: -place.joint.normal.y, z: -place.joint.normal.z });
  const along = own(place.cut.edge);
  const face: Frame = { origin: upright.origin, u: along, v: cross(inward, along), w: inward };
  const core: Solid = {
    kind: "place",
    solid: {
      kind: "extrude",
      outlines: [{ outer: rectangle(-reach, -reach, reach, reach), holes: [] }],
      height: reach,
    },
    frame: face,
  };
  // A hole begins outside the joint face: cutter and face in one plane may leave a skin between them.
  const bored = pins.reduce<Solid>(
    (wing, { at }) => {
      const middle = own(between(place.frame.origin, at));
      const outside = {
        x: middle.x + inward.x * clear,
        y: middle.y + inward.y * clear,
        z: middle.z + inward.z * clear,
      };
      return bore(wing, { ...face, origin: outside }, pin.diameter, pin.depth + clear);
    },
    { kind: "cut", from: raised, by: [core] },
  );
  return lessSunken(bored, given.sunken, thickness);
}
