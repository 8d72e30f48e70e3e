import type { Edged } from "../../../geometry/seen/mesh-edges.ts";
import type { Vec3 } from "../../../geometry/solid/vec3.ts";
import type { PaperSize } from "../neck/input.ts";

/** A part as a sheet of the assembled instrument draws it: its edges, and which way it is drawn apart, mm; none of what stays. */
export type DrawnPart = { readonly name: string; readonly edged: Edged; readonly apart: Vec3 };

/** What the sheets of an assembled instrument show; mm, as the hand of the order has it. */
export type AssemblySheetInput = {
  readonly hand: "right" | "left";
  readonly papers: readonly PaperSize[];
  readonly parts: readonly DrawnPart[];
  readonly stringLength: { readonly value: number; readonly tolerance: number };
};
