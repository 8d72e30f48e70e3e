import type { Model } from "../model.ts";
import { sawDrawings } from "./saw-drawings.ts";
import type { Need, WorkStep } from "./work-step.ts";

/** A part that is sawn out of its blank along a drawn line. */
export type SawnPart = {
  readonly part: string;
  readonly file: string;
  readonly datum: string;
  readonly square: string;
  readonly thickness: number;
  readonly needs: readonly Need[];
};

/** The step that saws a part along its saw drawing; none where the pack has no such drawing. */
export function sawStep(model: Model, { part, file, datum, square, thickness, needs }: SawnPart): WorkStep[] {
  if (!sawDrawings(model).includes(file)) return [];
  return [
    {
      ...{ id: `${part}.saw`, part, at: "bandsaw", datum, square, thickness, needs, files: [file] },
      what: `Saw the ${part} outside its line, ${datum} on the table; relief cuts first`,
      measure: "wood left outside the line",
      setUp: { kind: "saw", file, up: datum === "back" ? "front" : "back" },
    },
  ];
}

/** The step after which a part is sawn, or the one before it where it has no saw drawing. */
export function sawnOr(model: Model, file: string, before: string): string {
  return sawDrawings(model).includes(file) ? file.replace(/-saw$/, ".saw") : before;
}
