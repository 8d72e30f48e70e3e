import type { Path } from "../../geometry/path.ts";
import type { InsideName } from "../../order/inside-names.ts";
import type { Chosen } from "../guided/choose.ts";
import type { Feed } from "../guided/feed.ts";
import type { Kept } from "../guided/fixture.ts";
import type { FaceUp } from "../guided/seen-outline.ts";
import type { SetUp } from "../guided/set-up.ts";
import type { SheetFound } from "../guided/sheet-for.ts";
import type { VirtualCut } from "../virtual-cut/virtual-cut.ts";
import type { GuidedOpening } from "./guided-opening.ts";
import type { PlateLayout } from "./plate-layout.ts";

/** An opening of an inside template, mm: what it is for, its finished recess as it lies there, how deep that is, and the depths that the bit is set to. */
export type Opening = {
  readonly id: string;
  readonly recess: Path;
  readonly depth: number;
  readonly passes: readonly number[];
  readonly edge: GuidedOpening | null;
  readonly feed: Feed | null;
  readonly cut: VirtualCut | null;
};

/**
 * The inside template of a face, worked out when asked for, as it lies before whoever cuts, seen from above. `up` is the face of the work that is up: the
 * one that is cut into under a router that is moved, the other one over a table's bit. Without a set-up, or where an opening has no edge, what follows is null.
 */
export type Inside = InsideName & {
  readonly up: FaceUp;
  /** The outline of the part that it lies on. */
  readonly under: Path;
  /** How thick a packing of its own height has to be under a template on an arched board, from the face that the board is glued by, mm; null on flat faces. */
  readonly packing: number | null;
  readonly chosen: Chosen;
  readonly setUp: SetUp | null;
  readonly layout: PlateLayout | null;
  readonly kept: readonly Kept[];
  readonly sheet: SheetFound | null;
  readonly openings: readonly Opening[];
  /** Which plate each opening is on, counted from 0, in their order; null without a layout. */
  readonly plates: readonly number[] | null;
};
