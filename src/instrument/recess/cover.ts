import { circle } from "../../geometry/circle.ts";
import { type Frame, upright } from "../../geometry/solid/frame.ts";
import type { Outline, Solid } from "../../geometry/solid/solid.ts";
import { step } from "../../step/step.ts";
import type { CoreFrame } from "../core/frame.ts";
import { coreAxes } from "../core/from-core.ts";
import { placeOfWing, type WingPlaceInput } from "../wing/place.ts";
import type { Cover, MadeRecess } from "./recess.ts";

/** A cover in its ledge, mm: which face of its part, how thick that is, and where the part stands: a wing by its place, a body by its drop under the core's front. */
export type CoverInput = {
  readonly core: CoreFrame;
  readonly wing: WingPlaceInput | null;
  readonly drop: number;
  readonly from: MadeRecess["from"];
  readonly part: number;
  readonly cover: Cover;
  readonly screw: number;
};

/** A cover's outline with the holes of its screws, in the plane of its part. */
export function coverOutline({ path, screws }: Cover, screw: number): Outline {
  return { outer: path, holes: screws.map((at) => circle(at, screw / 2)) };
}

/** The axes of a cover's part in the core frame. */
export function coverAxes({ wing, drop }: Pick<CoverInput, "wing" | "drop">): Frame {
  return wing === null ? { ...upright, origin: { x: 0, y: 0, z: -drop } } : placeOfWing(wing).frame;
}

/** How high the back of a cover lies over the front of its part, mm. */
export function coverBase({ from, part, cover }: Pick<CoverInput, "from" | "part" | "cover">): number {
  return from === "front" ? -cover.thickness : -part;
}

/** A cover as it lies in its ledge, flush with the face. */
export const coverSolid = step("cover.solid", 1, (given: CoverInput): Solid => {
  const { core, cover, screw } = given;
  const plate: Solid = {
    ...{ kind: "extrude", outlines: [coverOutline(cover, screw)], base: coverBase(given) },
    height: cover.thickness,
  };
  const placed: Solid = { kind: "place", solid: plate, frame: coverAxes(given) };
  return { kind: "place", solid: placed, frame: coreAxes(core) };
});
