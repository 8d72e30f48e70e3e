import type { Finding } from "../../../checks/check.ts";
import { refuses } from "../../../checks/checks.ts";
import type { Answer, Store } from "../../../step/store.ts";
import type { Model } from "../../../workshop/model.ts";
import { workSequence } from "../../../workshop/sequence/sequence.ts";
import type { SetUpAt, WorkStep } from "../../../workshop/sequence/work-step.ts";
import { filedOf } from "../bench/filed-of.ts";
import { inCapitals } from "../bench/in-capitals.ts";
import { papersOf } from "../papers.ts";
import type { Sheet } from "../sheet.ts";
import { isMade, pictureOf } from "./guided-picture-of.ts";
import { guidedSheet } from "./guided-sheet.ts";
import { guidedWords } from "./guided-words.ts";

/** The sheet of one set-up, of one page or more: its file's name, the step of work that it is, and the machine file that it goes with. */
export type SetUpSheet = {
  readonly name: string;
  readonly part: string;
  readonly what: string;
  readonly seenFrom: string;
  readonly shows: readonly string[];
  readonly step: WorkStep & { readonly setUp: SetUpAt };
  readonly of: (store: Store) => Answer<readonly Sheet[]>;
};

/** A set-up that a check refuses: its step, the check, and why. It has no sheet. */
export type RefusedSetUp = {
  readonly step: WorkStep & { readonly setUp: SetUpAt };
  readonly check: string;
  readonly why: string;
};

/** Every set-up of a model's sequence of work: those with a sheet, in that order, and those that `found` refuses. */
export function setUpSheets(
  model: Model,
  found: readonly Finding[],
): { readonly sheets: readonly SetUpSheet[]; readonly refused: readonly RefusedSetUp[] } {
  const steps = workSequence(model, filedOf(model)).filter(isSetUp);
  const refusedBy = ({ setUp: { file } }: SetUpStep) =>
    found.find((finding) => refuses(finding) && finding.holds.includes(file));
  return {
    sheets: steps.filter((one) => refusedBy(one) === undefined).flatMap((one) => sheetOf(model, one, found)),
    refused: steps.flatMap((step) => {
      const by = refusedBy(step);
      return by === undefined ? [] : [{ step, check: by.id, why: by.why }];
    }),
  };
}

type SetUpStep = SetUpSheet["step"];

function isSetUp(step: WorkStep): step is SetUpStep {
  return step.setUp !== null;
}

function sheetOf(model: Model, step: SetUpStep, found: readonly Finding[]): SetUpSheet[] {
  const { file, up, kind } = step.setUp;
  if (kind === "saw") return [];
  const fixture = model.fixtures().find((one) => one.file === file);
  if (fixture === undefined || !isMade(fixture)) return [];
  const own = found.filter(({ holds }) => holds.includes(file));
  return [
    {
      ...{ name: `set-up-${file}`, part: step.part, seenFrom: up, shows: [file], step },
      what: `sheet of the set-up at the ${step.at}: ${step.what}`,
      of: (store) =>
        store.answer(guidedSheet, {
          ...{ name: `${inCapitals(file)}, ${inCapitals(up)} UP`, papers: papersOf(model.spec.shop.paper) },
          ...{ picture: pictureOf(fixture), words: guidedWords(fixture, step, own) },
        }),
    },
  ];
}
