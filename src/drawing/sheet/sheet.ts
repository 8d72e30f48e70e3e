import type { Extents } from "../../geometry/measure.ts";
import type { Path } from "../../geometry/path.ts";

/** What a line of a sheet means; how thick it is drawn and how it is broken follows from that alone. */
export type Weight =
  /** An edge that is seen, at the border of what is seen. */
  | "outline"
  /** The border of wood that is cut through. */
  | "cut"
  /** An edge that is seen within the outline. */
  | "edge"
  /** An edge that wood hides. */
  | "hidden"
  | "centre"
  | "hatch"
  /** A place that something else takes up: nut, board, bridge. */
  | "reference"
  /** A dimension's own line or a leader. */
  | "dimension"
  /** From what is measured to the dimension's line. */
  | "extension"
  /** A filled arrowhead; closed. */
  | "arrow"
  /** The thick ends of a line along which a section is cut. */
  | "station"
  | "frame"
  /** A plot's axis with its ticks. */
  | "axis"
  /** The border of a plot's bar. */
  | "bar"
  /** From the least to the most that is usual of what a plot shows. */
  | "range"
  /** How what a plot shows runs. */
  | "curve";

/** A path on paper, mm, y upward. */
export type SheetLine = { readonly weight: Weight; readonly path: Path };

/**
 * A line of text on paper: the start, middle or end of its base line, mm, as `align` says; `height` is that of its capitals, at
 * least; `turn` is 0, or 90 for what reads upward.
 */
export type SheetText = {
  readonly text: string;
  readonly x: number;
  readonly y: number;
  readonly height: number;
  readonly turn: 0 | 90;
  readonly align: "left" | "center" | "right";
};

/** Lines and texts together, on paper, mm. */
export type Marks = { readonly lines: readonly SheetLine[]; readonly texts: readonly SheetText[] };

/** A sheet of paper and what is drawn on it, mm from its lower left corner; nothing is drawn outside `frame`. */
export type Sheet = Marks & {
  readonly paper: { readonly id: string; readonly width: number; readonly height: number };
  readonly frame: Box;
  /** Where the title's block goes: nothing else is drawn there. */
  readonly titleBox: Box;
  /** The scale of the main views, as it stands in the title: "1:2". */
  readonly scale: string;
  /** What its title says of it beside whose it is, if that is other than of a part. */
  readonly notes?: readonly string[];
};

/** An upright rectangle on paper, mm. */
export type Box = Extents;

/** Several marks as one. */
export function together(parts: readonly Marks[]): Marks {
  return { lines: parts.flatMap(({ lines }) => lines), texts: parts.flatMap(({ texts }) => texts) };
}
