import { type Settable, settable } from "./settable.ts";

const length = (least: number, most: number) => settable("veneers", "length", least, most, "veneers");

/** What can be set of the veneers that a design's parts get. */
export const veneerSettables: readonly Settable[] = [
  length(0.1, 5)(
    "veneer.thickness",
    "Thickness of a veneer, of which the part's own thickness is told with it",
  ),
  length(0, 50)(
    "veneer.margin",
    "How far a veneer is cut outside its part's outline, to be trimmed when it is glued",
  ),
];
