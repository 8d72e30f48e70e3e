import { step } from "../step/step.ts";

/**
 * A bridge on the core, mm and degrees: its height square from the core's front, how thick foot and crown are along it, its
 * tilt; and the strings' mean angles to the core's front.
 */
export type ResultantInput = {
  readonly height: number;
  readonly foot: number;
  readonly top: number;
  readonly tilt: number;
  readonly nut: number;
  readonly tail: number;
};

/**
 * How far ahead of the foot's middle, toward the nut, the strings' resultant meets the core's front, mm. It halves the angle that
 * the strings include, so it leans by (b - a) / 2; the crown's middle stands (foot - top) / 2 and h tan(tilt) behind the foot's,
 * since the tail-side face is flat and leans: h tan((b - a) / 2) - (foot - top) / 2 - h tan(tilt).
 */
export const bridgeResultant = step("physics.bridge-resultant", 1, (given: ResultantInput): number => {
  const { height, foot, top, tilt, nut, tail } = given;
  const tan = (degrees: number) => Math.tan((degrees * Math.PI) / 180);
  return height * tan((tail - nut) / 2) - (foot - top) / 2 - height * tan(tilt);
});

/** Where a standing bridge's feet have their middles along y, mm, and per string its place there with its load and side pull, N. */
export type FootLoadsInput = {
  readonly feet: { readonly bass: number; readonly treble: number };
  readonly strings: readonly {
    readonly y: number;
    readonly height: number;
    readonly load: number;
    readonly side: number;
  }[];
};

/** What each foot carries, N; negative where it would have to be held down. Together they carry the strings' whole load. */
export type FootLoads = { readonly bass: number; readonly treble: number };

/**
 * The load of either foot, by moments about the other: each string presses at its place across, and its side pull, at its
 * height over the core's front, tips the bridge toward the side that it pulls to.
 */
export const footLoads = step("physics.foot-loads", 1, ({ feet, strings }: FootLoadsInput): FootLoads => {
  const moment = (about: number) =>
    strings.reduce((sum, { y, height, load, side }) => sum + (y - about) * load + height * side, 0);
  const apart = feet.treble - feet.bass;
  return { bass: -moment(feet.treble) / apart, treble: moment(feet.bass) / apart };
});

/** What a screwed saddle's screws are held against, N, and their diameters, mm. */
export type ScrewShearInput = {
  readonly lean: number;
  readonly side: number;
  readonly sizes: readonly number[];
};

/**
 * Mean shear stress of a screwed saddle's screws, MPa: lean and side pull over their whole area, as if the foot had no friction.
 * The full diameter is taken, so a screw whose thread reaches into the joint carries more. What tipping pulls them with is left out.
 */
export const screwShear = step("physics.screw-shear", 1, ({ lean, side, sizes }: ScrewShearInput): number => {
  const area = sizes.reduce((sum, size) => sum + (Math.PI / 4) * size ** 2, 0);
  return Math.hypot(lean, side) / area;
});
