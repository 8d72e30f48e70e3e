import type { Path } from "../../geometry/path.ts";
import type { Point } from "../../geometry/point.ts";
import type { CutRun, EdgeUse } from "./cut-runs.ts";
import type { FaceUp } from "./seen-outline.ts";
import type { CutWanted } from "./set-up.ts";

/** Work whose joint lies against a batten: how far the joint's back arris stands out from the front one, and where the joint's pins are along it, mm. */
export type HeldByBatten = {
  readonly by: "batten";
  readonly back: number;
  readonly jointPins: readonly number[];
};

/**
 * Work that finds its place by two index pins of unequal size through or into it, and is screwed to the base in its waste: each hold-down may
 * stand at any of some places, the best first; mm. `clamps` says whether clamps on the base press it too, `said` how it is held, in lines for a drawing.
 */
export type HeldByPins = {
  readonly by: "pins";
  readonly pins: readonly { readonly at: Point; readonly diameter: number }[];
  readonly screws: readonly (readonly Point[])[];
  readonly screw: { readonly what: "screw" | "bolt"; readonly diameter: number };
  readonly clamps: boolean;
  readonly wanted: number;
  readonly said: readonly string[];
  /** Lines to scribe on the base, such as the blank's edges. */
  readonly marks: readonly Path[];
};

/**
 * A piece of work that edges of are cut in one set-up, as it lies before whoever cuts, a face up; mm. `uses` says of each segment of its closed,
 * counter-clockwise outline what this set-up does with it: what is cut must be one run, and what it leaves alone counts as joined.
 */
export type GuidedWork = {
  readonly file: string;
  readonly part: string;
  readonly kind: CutWanted["kind"];
  readonly up: FaceUp;
  readonly outline: Path;
  readonly uses: readonly EdgeUse[];
  readonly thickness: number;
  readonly allowance: number;
  /** The line that the base begins at, the run on one side of it and all of the base on the other. */
  readonly base: { readonly from: Point; readonly to: Point };
  /** Edges that the cutter must leave. */
  readonly joined: readonly Path[];
  /** How far wood goes on beyond the run's first and last ends, so that run-in and run-out begin behind that. */
  readonly waste: readonly [first: number, last: number];
  /** A run that is cut in a second set-up on the same fixture, as it lies then. */
  readonly again: CutRun | null;
  readonly held: HeldByBatten | HeldByPins;
};
