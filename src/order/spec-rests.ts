import type { RecessPart } from "./recess-part.ts";
import type { FramePoint, SpecFace } from "./spec.ts";

/** What carries a chin rest, its footprint's outline, and the places of its screws in that frame; none where a clamp holds it. */
export type SpecChinRest = {
  readonly on: RecessPart;
  readonly face: SpecFace;
  readonly hold: "clamp" | "screws";
};

/**
 * A mount for a rest in a part's back: its middle in the part's plane, mm: along a wing or a body from its head end and out from a wing's joint or to
 * the treble side, in the neck along the core's front from its start; and which way its slot runs, degrees from the part's axis, outward or to the treble side.
 */
export type SpecMount = {
  readonly kind: "shoulder" | "knee";
  readonly id: string;
  readonly in: RecessPart;
  readonly at: FramePoint;
  readonly turn: number;
};

/** What holds an instrument up: its chin rest, the mounts for other rests, its endpin. */
export type SpecRests = {
  readonly chin: SpecChinRest | null;
  readonly mounts: readonly SpecMount[];
  readonly endpin: boolean;
};
