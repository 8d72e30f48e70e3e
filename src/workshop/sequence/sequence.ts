import type { Model } from "../model.ts";
import { boardSteps } from "./board-steps.ts";
import { bodySteps } from "./body-steps.ts";
import { finishingSteps } from "./finishing-steps.ts";
import { joiningSteps } from "./joining-steps.ts";
import { neckSteps } from "./neck-steps.ts";
import { preparingSteps } from "./preparing-steps.ts";
import { smallSteps } from "./small-steps.ts";
import { wingSteps } from "./wing-steps.ts";
import type { Filed, Need, WorkStep } from "./work-step.ts";

/**
 * The sequence of work of one instrument, from boards to a playing one, each step after all that it needs. `filed` are the files of its pack: a step
 * names those of its own that are there, in all their pieces, and waits for its fixture to be cut and its jigs to be printed.
 */
export function workSequence(model: Model, filed: readonly Filed[]): WorkStep[] {
  const steps = [
    ...preparingSteps(model, filed),
    ...neckSteps(model),
    ...wingSteps(model),
    ...bodySteps(model),
    ...boardSteps(model),
    ...joiningSteps(model),
    ...smallSteps(model),
    ...finishingSteps(model),
  ];
  return steps.map((step) => {
    const files = filed.filter(({ name }) => step.files.some((asked) => isNamed(asked, name)));
    return {
      ...step,
      files: files.map(({ name }) => name),
      needs: [...step.needs, ...prepared(step.id, files)],
    };
  });
}

/** Whether a file is the one asked for: by its name, as a piece of it, or by the start of its name before a star. */
function isNamed(asked: string, name: string): boolean {
  if (asked.endsWith("*")) return name.startsWith(asked.slice(0, -1));
  return name === asked || (name.startsWith(`${asked}-`) && /^\d+-\d+$/.test(name.slice(asked.length + 1)));
}

/** What a step waits for beside its work: its fixture, and its jigs. */
function prepared(id: string, files: readonly Filed[]): Need[] {
  if (id === "fixtures.cut" || id === "jigs.print") return [];
  const has = (folder: string) => files.filter((file) => file.folder === folder).map(({ name }) => name);
  const [fixtures, jigs] = [has("fixtures"), has("printed")];
  return [
    ...(fixtures.length === 0 ? [] : [{ from: "fixtures.cut", what: fixtures.join(", ") }]),
    ...(jigs.length === 0 ? [] : [{ from: "jigs.print", what: "its printed jigs" }]),
  ];
}
