/** A veneer on a face of a part: its grain in degrees from the part's axis, outward or to the treble side; one sheet, or two leaves that mirror each other along a body's middle. */
export type SpecVeneer = {
  readonly id: string;
  readonly on: "body" | "wing-bass" | "wing-treble";
  readonly face: "front" | "back";
  readonly grain: number;
  readonly pair: "mirrored" | "none";
};
