import type { Model } from "../model.ts";
import { type SawSetUp, sawSetUpsOf } from "./saw-set-ups.ts";
import { inMm, type Need, type WorkStep } from "./work-step.ts";

/** A part that is sawn out of its blank along a drawn line: which of its drawing's cuts, what is still square, how thick it is there, mm. */
export type SawnPart = {
  readonly part: string;
  readonly cuts: readonly string[];
  readonly square: string;
  readonly thickness: number;
  readonly needs: readonly Need[];
};

/** The steps that saw a part along its saw drawing, one a cut, each after the one before. */
export function sawSteps(model: Model, { part, cuts, square, thickness, needs }: SawnPart): WorkStep[] {
  const wanted = sawSetUpsOf(model, `${part}-saw`).filter(({ cut }) => cuts.includes(cut));
  return wanted.map((one, i): WorkStep => {
    const { file, cut, onTable, up } = one;
    const before = i === 0 ? needs : [{ from: stepOf(part, wanted[i - 1]!.cut), what: "its cut before" }];
    return {
      ...{ id: stepOf(part, cut), part, at: "bandsaw", datum: onTable, square, thickness, needs: before },
      what: `Saw the ${part}'s ${inWords[cut] ?? cut} outside its line, ${onTable} on the table${tableWords(one)}; relief cuts first`,
      ...{ measure: "wood left outside the line", files: [file] },
      setUp: { kind: "saw", file, cut, up },
    };
  });
}

const inWords: { readonly [cut: string]: string } = { outline: "outline", side: "sides", end: "ends" };

function tableWords({ tilt, fence }: SawSetUp): string {
  return tilt === 0 ? "" : `, table tilted ${inMm(tilt)} degrees, fence on the ${fence}`;
}

/** The id of the step that makes one cut of a part. */
export function stepOf(part: string, cut: string): string {
  return `${part}.saw-${cut}`;
}
