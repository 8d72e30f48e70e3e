import type { Path } from "../../geometry/path.ts";
import type { Point } from "../../geometry/point.ts";
import type { EdgeUse } from "./cut-runs.ts";
import type { FaceUp } from "./seen-outline.ts";
import type { CutWanted } from "./set-up.ts";

/** How work finds its place on a fixture: its joint against a batten, and how far the joint's back arris stands out from the front one, mm. */
export type HeldByBatten = {
  readonly by: "batten";
  readonly back: number;
  /** Where the joint's own pins are along it, mm. */
  readonly jointPins: readonly number[];
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
  /** The wood beyond the run's ends that is cut with it, so that run-in and run-out begin behind that. */
  readonly waste: number;
  readonly held: HeldByBatten;
};
