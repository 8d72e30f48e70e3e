import type { Finding } from "../../../checks/check.ts";
import { refuses } from "../../../checks/checks.ts";
import type { Answer, Store } from "../../../step/store.ts";
import type { Model } from "../../../workshop/model.ts";
import { sawSetUpsOf } from "../../../workshop/sequence/saw-set-ups.ts";
import { workSequence } from "../../../workshop/sequence/sequence.ts";
import type { SetUpAt, SetUpStep, WorkStep } from "../../../workshop/sequence/work-step.ts";
import { filedOf } from "../bench/filed-of.ts";
import { inCapitals } from "../bench/in-capitals.ts";
import { papersOf } from "../papers.ts";
import type { Sheet } from "../sheet.ts";
import { isMade, pictureOf } from "./guided-picture-of.ts";
import { guidedSheet } from "./guided-sheet.ts";
import { guidedWords } from "./guided-words.ts";
import { insidePictureOf, isMadeInside } from "./inside-picture-of.ts";
import { insideSheet } from "./inside-sheet.ts";
import { insideWords } from "./inside-words.ts";
import { sawPictureOf } from "./saw-picture-of.ts";
import { sawSheet } from "./saw-sheet.ts";
import { sawWords } from "./saw-words.ts";

/** The sheet of one set-up, of one page or more: its file's name, the step of work that it is, and the machine file that it goes with. */
export type SetUpSheet = {
  readonly name: string;
  readonly part: string;
  readonly what: string;
  readonly seenFrom: string;
  readonly shows: readonly string[];
  readonly step: SetUpStep;
  readonly of: (store: Store) => Answer<readonly Sheet[]>;
};

/** A set-up that has no sheet: its step, the check that refuses it, and why. */
export type RefusedSetUp = {
  readonly step: SetUpStep;
  readonly check: string;
  readonly why: string;
};

/**
 * Every set-up of a model's sequence of work: those with a sheet, in that order, and those without: what `found` refuses, and what nothing can be drawn
 * of, so that none is left out without a word.
 */
export function setUpSheets(
  model: Model,
  found: readonly Finding[],
): { readonly sheets: readonly SetUpSheet[]; readonly refused: readonly RefusedSetUp[] } {
  const steps = workSequence(model, filedOf(model)).filter(isSetUp);
  const all = steps.map((step): { sheet: SetUpSheet } | { refused: RefusedSetUp } => {
    const { file } = step.setUp;
    const by = found.find((finding) => refuses(finding) && finding.holds.includes(file));
    if (by !== undefined) return { refused: { step, check: by.id, why: by.why } };
    const sheet = sheetOf(model, step, steps, found)[0];
    return sheet === undefined ? { refused: { step, ...undrawn } } : { sheet };
  });
  return {
    sheets: all.flatMap((one) => ("sheet" in one ? [one.sheet] : [])),
    refused: all.flatMap((one) => ("refused" in one ? [one.refused] : [])),
  };
}

/** What is said of a set-up that no check refuses, or that a person overruled, and of which there is no edge or line to draw. */
const undrawn = {
  check: "nothing drawn",
  why: "no guided edge or saw line could be worked out: nothing is cut by it",
} as const;

function isSetUp(step: WorkStep): step is SetUpStep {
  return step.setUp !== null;
}

function sheetOf(
  model: Model,
  step: SetUpStep,
  steps: readonly SetUpStep[],
  found: readonly Finding[],
): SetUpSheet[] {
  const { setUp } = step;
  const { file, up } = setUp;
  const own = found.filter(({ holds }) => holds.includes(file));
  const of =
    setUp.kind === "saw"
      ? sawnBy(model, step, setUp.cut, own)
      : (setUp.kind === "inside" ? routedBy : guidedBy)(model, step, own);
  if (of === undefined) return [];
  return [
    {
      ...{ name: nameOf(steps, setUp), part: step.part, seenFrom: up, shows: [file], step, of },
      what: `sheet of the set-up at the ${step.at}: ${step.what}`,
    },
  ];
}

/** A drawing with more than one cut, or a fixture that is used twice, has a sheet for each. */
function nameOf(steps: readonly SetUpStep[], { file, ...at }: SetUpAt): string {
  const alone = steps.filter((step) => step.setUp.file === file).length === 1;
  return alone ? `set-up-${file}` : `set-up-${file}-${at.kind === "saw" ? at.cut : at.up}`;
}

function titleOf(name: string, up: string): string {
  return `${inCapitals(name)}, ${inCapitals(up)} UP`;
}

function guidedBy(model: Model, step: SetUpStep, found: readonly Finding[]): SetUpSheet["of"] | undefined {
  const { file, up } = step.setUp;
  const fixture = model.fixtures().find((one) => one.file === file);
  if (fixture === undefined || !isMade(fixture)) return undefined;
  return (store) =>
    store.answer(guidedSheet, {
      ...{ name: titleOf(file, up), papers: papersOf(model.spec.shop.paper) },
      ...{ picture: pictureOf(fixture), words: guidedWords(fixture, step, found) },
    });
}

function routedBy(model: Model, step: SetUpStep, found: readonly Finding[]): SetUpSheet["of"] | undefined {
  const { file, up } = step.setUp;
  const inside = model.insides().find((one) => one.file === file);
  if (inside === undefined || !isMadeInside(inside)) return undefined;
  return (store) =>
    store.answer(insideSheet, {
      ...{ name: titleOf(file, up), papers: papersOf(model.spec.shop.paper) },
      ...{ picture: insidePictureOf(inside), words: insideWords(inside, step, found) },
    });
}

function sawnBy(
  model: Model,
  step: SetUpStep,
  cut: string,
  found: readonly Finding[],
): SetUpSheet["of"] | undefined {
  const { file, up } = step.setUp;
  const setUp = sawSetUpsOf(model, file).find((one) => one.cut === cut);
  const picture = setUp && sawPictureOf(model, setUp);
  if (setUp === undefined || picture === undefined) return undefined;
  const which = sawSetUpsOf(model, file).length > 1 ? `${file}, ${cut}` : file;
  return (store) =>
    store.answer(sawSheet, {
      ...{ name: titleOf(which, up), papers: papersOf(model.spec.shop.paper), picture },
      words: sawWords(model, setUp, step, found),
    });
}
