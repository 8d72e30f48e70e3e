import { boardFixture, neckFixture } from "../../order/fixture-names.ts";
import type { Fixture } from "../guided/fixture.ts";
import type { Model } from "../model.ts";
import type { Need, WorkStep } from "./work-step.ts";

/** What is known of a part when its outline is cut: what it is measured from, what is still square, how thick it is there, mm, and what comes before. */
export type CutState = {
  readonly part: string;
  readonly datum: string;
  /** What it is measured from when it is turned over for a second set-up. */
  readonly turned?: string;
  readonly square: string;
  readonly thickness: number;
  readonly drawing: string;
  readonly needs: readonly Need[];
};

/** The fixtures that a part's outline is cut against: their files bear its name. Inside templates bear that of what they open. */
export function outlineFixtures(model: Model, part: string): readonly Fixture[] {
  return model.fixtures().filter((fixture) => fixture.part === part && fixture.file.startsWith(`${part}-`));
}

/**
 * The steps that bring a part's outline to its line: one for each set-up at a fixture of its own, each after the one before; by hand to the line where
 * it has none.
 */
export function guidedSteps(model: Model, given: CutState): WorkStep[] {
  const { part, datum, square, thickness, drawing, needs } = given;
  const state = { part, datum, square, thickness };
  const fixtures = outlineFixtures(model, part);
  if (fixtures.length === 0)
    return [
      {
        ...{ ...state, id: `${part}.outline`, at: "bench", needs, files: [drawing], setUp: null },
        what: `Bring the ${part}'s outline to its line by hand, edges square to the ${datum}`,
        measure: "length, greatest width",
      },
    ];
  const cuts = fixtures.flatMap(cutsOf);
  return cuts.map(({ file, up, id }, i): WorkStep => {
    const again = i > 0 && cuts[i - 1]!.file === file;
    const before = i === 0 ? needs : [{ from: cuts[i - 1]!.id, what: "its edge, finished" }];
    const at = file.endsWith("-shaper") ? "shaper" : "router";
    return {
      ...{ ...state, id, at, needs: before, files: [file, drawing] },
      datum: again ? (given.turned ?? datum) : datum,
      what: `Cut the ${part}'s ${again ? "other edge" : "edge"} in its fixture, ${up} up, by the set-up's sheet`,
      measure: "thickness there; across the cut edges",
      setUp: { kind: "fixture", file, up },
    };
  });
}

/** The fixtures that are used twice, the work turned over for its other edge. */
const usedTwice: readonly string[] = [neckFixture, boardFixture];

/** The set-ups at one fixture, each with its step's id. */
function cutsOf({
  file,
  up,
}: Fixture): { readonly file: string; readonly up: string; readonly id: string }[] {
  const first = { file, up, id: `${file}.cut` };
  if (!usedTwice.includes(file)) return [first];
  const other = up === "front" ? "back" : "front";
  return [first, { file, up: other, id: `${file}.cut-${other}` }];
}

/** The last step of a part's outline, whatever way it was cut. */
export function outlineDone(model: Model, part: string): string {
  return outlineFixtures(model, part).flatMap(cutsOf).at(-1)?.id ?? `${part}.outline`;
}
