import type { Inside } from "../inside/inside.ts";
import type { Model } from "../model.ts";
import type { Need, WorkStep } from "./work-step.ts";

/** A part that recesses are routed into: what it is measured from, what is still square, what comes before. */
export type RecessedPart = {
  readonly part: string;
  readonly datum: string;
  readonly square: string;
  readonly needs: readonly Need[];
};

function insidesIn(model: Model, part: string): readonly Inside[] {
  return model.insides().filter((inside) => inside.part === part);
}

/** The steps that rout a part's recesses through its inside templates, one a face, each after the one before; none where it has none. */
export function insideSteps(model: Model, { part, datum, square, needs }: RecessedPart): WorkStep[] {
  const insides = insidesIn(model, part);
  return insides.map(({ file, face, up }, i): WorkStep => {
    const before = i === 0 ? needs : [{ from: stepAt(insides[i - 1]!), what: "its other face, routed" }];
    return {
      ...{ id: stepAt({ file }), part, at: "router", datum, square, needs: before, files: [file] },
      what: `Rout what lies in the ${part}'s ${face} through its inside template, ledges before recesses, by the set-up's sheet`,
      ...{ thickness: null, measure: "depth of each; fit of what goes in" },
      setUp: { kind: "inside", file, up },
    };
  });
}

/** The last step that routs recesses into a part, or the one before it where nothing is routed. */
export function insidesDone(model: Model, part: string, before: string): string {
  const last = insidesIn(model, part).at(-1);
  return last === undefined ? before : stepAt(last);
}

function stepAt({ file }: Pick<Inside, "file">): string {
  return `${file}.cut`;
}
