import type { Path } from "../../geometry/path.ts";
import type { Point } from "../../geometry/point.ts";
import type { VirtualCut } from "../virtual-cut/virtual-cut.ts";
import type { Chosen } from "./choose.ts";
import type { CutRun } from "./cut-runs.ts";
import type { Feed } from "./feed.ts";
import type { GrainLengths, GrainStretch } from "./grain.ts";
import type { GuidedEdge } from "./guided-edge.ts";
import type { Holding } from "./holding.ts";
import type { FaceUp } from "./seen-outline.ts";
import type { SetUp } from "./set-up.ts";
import type { SheetFound } from "./sheet-for.ts";

/** Something that the cutter must not come near: its outline, what it is, and the least room round it, mm. */
export type Kept = {
  readonly id: string;
  readonly what: "clamp" | "stop" | "pin" | "screw" | "handhold";
  readonly path: Path;
  readonly margin: number;
};

/**
 * A fixture that a part's edges are cut against, worked out when asked for, as it lies before whoever cuts, face up. `setUp` and `edge` say when
 * there is none; what follows from them is null then.
 */
export type Fixture = {
  readonly file: string;
  readonly part: string;
  /** Which of the work's faces is up. */
  readonly up: FaceUp;
  /** Whether the template lies on the work or under it; a collar runs over the cutter or under it alike. */
  readonly template: "over" | "under";
  /** The part's outline as it lies on the template, and the run of it that is cut. */
  readonly outline: Path;
  readonly joined: readonly Path[];
  readonly run: CutRun;
  readonly thickness: number;
  readonly allowance: number;
  /** How far wood goes on beyond the run's first and last ends, mm. */
  readonly waste: readonly [first: number, last: number];
  /** How the work is held and used on it, in lines for a drawing; none where a batten says it all. */
  readonly said: readonly string[];
  readonly chosen: Chosen;
  readonly setUp: SetUp | null;
  readonly edge: GuidedEdge | null;
  readonly feed: Feed | null;
  /** How much of the run is cut with, against, along the grain and across it, this face up. */
  readonly grain: GrainLengths | null;
  /** The same in stretches along the run, in its own order. */
  readonly stretches: readonly GrainStretch[] | null;
  readonly holding: Holding | null;
  readonly kept: readonly Kept[];
  readonly sheet: SheetFound | null;
  readonly cut: VirtualCut | null;
};

/** A place on a drawing and a direction of unit length. */
export type Arrow = { readonly at: Point; readonly way: Point };
