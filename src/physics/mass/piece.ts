import type { Vec3 } from "../../geometry/solid/vec3.ts";

/** Something that the instrument's weight is made up of: its mass, g, and its middle, mm. */
export type Piece = {
  readonly name: string;
  readonly kind: "part" | "string" | "hardware";
  readonly mass: number;
  readonly centre: Vec3;
};

/** All of these as one: their mass, g, and the middle of it, mm; of nothing that is no number. */
export function wholeOf(pieces: readonly Piece[]): Pick<Piece, "mass" | "centre"> {
  const mass = pieces.reduce((sum, piece) => sum + piece.mass, 0);
  const mean = (axis: "x" | "y" | "z") =>
    pieces.reduce((sum, piece) => sum + piece.mass * piece.centre[axis], 0) / mass;
  return { mass, centre: { x: mean("x"), y: mean("y"), z: mean("z") } };
}

/** The acceleration of a fall, m/s² (standard gravity, by definition). */
export const gravity = 9.80665;

/**
 * What the weight turns about a place so far from the nut, N mm, positive toward the head: m g d, d the way along x from the middle of the mass to the
 * place, as the instrument is held level.
 */
export function momentAbout(x: number, { mass, centre }: Pick<Piece, "mass" | "centre">): number {
  return (mass / 1000) * gravity * (x - centre.x);
}
