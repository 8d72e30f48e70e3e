import { circleThrough } from "../../geometry/circle-through.ts";
import type { PathPoint } from "../../geometry/path.ts";
import { step } from "../../step/step.ts";
import { type CoreFrame, intoCore } from "../core/frame.ts";
import { type Circle, notchedCrown, onCircle } from "../notched-crown.ts";

/** Lengths in mm, degrees; strings from the highest to the lowest, in the plane across the instrument at the bridge. */
export type FaceInput = {
  readonly stringLength: number;
  readonly core: CoreFrame;
  readonly tilt: number;
  readonly crown: Circle;
  readonly margin: number;
  readonly strings: readonly { readonly y: number; readonly z: number; readonly diameter: number }[];
};

/**
 * A string's place in a crown, mm: across, its notch's bottom over the base, its width, and how deep the bottom lies under the
 * crown there (none or less: the string doesn't touch it).
 */
export type NotchPlace = {
  readonly y: number;
  readonly bottom: number;
  readonly width: number;
  readonly sunk: number;
};

/**
 * The bridge's crown as it lies in its flat tail-side face: first axis y, second up the face from the core's front, mm.
 *
 * `smooth` is the crown before any notch, `notched` with a round notch for each string, half of it sunk on the fitted
 * circle; both run from treble to bass. `notches` says where each string's notch stands.
 */
export type CrownFace = {
  readonly smooth: readonly PathPoint[];
  readonly notched: readonly PathPoint[];
  readonly notches: readonly NotchPlace[];
};

/**
 * The crown laid into the bridge's face. Heights square from the core's front grow by 1 / cos(tilt) along the leaning face;
 * that all strings meet the bridge at one x, whatever its tilt, is the one simplification (under 0.04 mm for a violin).
 * A circle seen so is an ellipse by one part in four hundred; the circle through its ends and its top stands for it.
 */
export const crownFace = step("bridge.crown-face", 1, (given: FaceInput): CrownFace => {
  const { stringLength, core, tilt, crown, margin, strings } = given;
  const up = (z: number) => intoCore(core, { x: stringLength, z }).z / Math.cos((tilt * Math.PI) / 180);
  const [treble, bass] = [strings[0]!.y + margin, strings.at(-1)!.y - margin];
  const lifted = (y: number) => ({ x: y, y: up(onCircle(crown, y).y) });
  const through = circleThrough(
    lifted(treble),
    { x: crown.centre.x, y: up(crown.centre.y + crown.radius) },
    lifted(bass),
  );
  if (through.kind !== "ok")
    throw new RangeError("a crown that is flat: contradictions.ts finds it beforehand");
  const circle = { centre: through.centre, radius: through.radius };
  const notches = strings.map(({ y, z, diameter }) => ({ centre: { x: y, y: up(z) }, radius: diameter / 2 }));
  return {
    smooth: notchedCrown(circle, treble, bass, []),
    notched: notchedCrown(circle, treble, bass, notches),
    notches: notches.map(({ centre, radius }) => {
      const bottom = centre.y - radius;
      return { y: centre.x, bottom, width: 2 * radius, sunk: onCircle(circle, centre.x).y - bottom };
    }),
  };
});
