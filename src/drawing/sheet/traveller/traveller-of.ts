import type { Finding } from "../../../checks/check.ts";
import { boughtOf } from "../../../workshop/bought.ts";
import type { Model } from "../../../workshop/model.ts";
import { workSequence } from "../../../workshop/sequence/sequence.ts";
import { inMm, type WorkStep } from "../../../workshop/sequence/work-step.ts";
import { filedOf } from "../bench/filed-of.ts";
import { papersOf } from "../papers.ts";
import type { RefusedSetUp } from "../set-up/set-up-sheets.ts";
import { cutRemarks, cutRows, partRows } from "./stock-rows.ts";
import type { TravellerWords } from "./traveller-words.ts";

/** What a traveller tells beside its model: the order's fingerprint, what the checks found, which files are held back, which set-ups have a sheet and which are refused. */
export type TravellerGiven = {
  readonly fingerprint: string;
  readonly found: readonly Finding[];
  readonly held: readonly { readonly file: string; readonly check: string; readonly why: string }[];
  readonly sheets: readonly { readonly name: string; readonly step: WorkStep }[];
  readonly refused: readonly RefusedSetUp[];
  readonly notLookedAt: readonly string[];
};

/** All that a traveller says. */
export function travellerOf(model: Model, given: TravellerGiven): TravellerWords {
  const { spec } = model;
  const { found, held, refused } = given;
  return {
    ...{ order: spec.order, fingerprint: given.fingerprint, papers: papersOf(spec.shop.paper) },
    head: headOf(model),
    refused: refused.map(
      ({ step, check, why }) => `${step.setUp.file}, ${step.setUp.up} up: ${check}: ${why}`,
    ),
    held: held.map(({ file, check, why }) => `${file}: ${check}: ${why}`),
    overruled: found.flatMap(({ id, why, overruled }) =>
      overruled === undefined ? [] : [`${id}: ${why}. Reason given: ${overruled}`],
    ),
    attended: found.filter(({ status }) => status === "attend").map(({ id, why }) => `${id}: ${why}`),
    notLookedAt: given.notLookedAt,
    ...{ parts: partRows(model), cuts: cutRows(model), cutRemarks: cutRemarks(model) },
    bought: boughtOf(model).map(({ count, what, size, where }) => [String(count), what, size, where, ""]),
    steps: stepRows(model, given),
  };
}

function headOf({ spec }: Model): [string, string][] {
  return [
    ["Order", spec.revision === null ? spec.order : `${spec.order}, revision ${spec.revision}`],
    ["Design", `${spec.design}: ${spec.title}`],
    ["Strings", `${spec.count}: ${spec.strings.map(({ name }) => name).join(" ")}, ${spec.voice}`],
    ["Hand", spec.hand],
    ["Frets", spec.frets === null ? "none" : String(spec.frets.count)],
    ["Shop", `${spec.shop.shop}: ${spec.shop.title}`],
    ["Begun by, date", ""],
  ];
}

/** A row a step, counted from 1; what it needs is named by the number of the step that gives it and where that is done. */
function stepRows(model: Model, { sheets, refused }: TravellerGiven): string[][] {
  const steps = workSequence(model, filedOf(model));
  const numberOf = (id: string) => steps.findIndex((step) => step.id === id) + 1;
  return steps.map((step, i) => {
    const { id, at, what, datum, square, thickness, files, needs, measure } = step;
    const sheet = sheets.find((one) => one.step.id === id);
    const refusedBy = refused.find((one) => one.step.id === id);
    const needed = needs.map(({ from, what: thing }) => {
      const giver = steps.find((one) => one.id === from);
      return giver === undefined ? `${thing} (${from})` : `${numberOf(from)} ${giver.at}: ${thing}`;
    });
    return [
      ...[String(i + 1), at],
      refusedBy === undefined ? what : `REFUSED, NO SHEET: ${refusedBy.check}. ${what}`,
      `${datum}; ${square}`,
      thickness === null ? "" : inMm(thickness),
      filesText([...(sheet === undefined ? [] : [sheet.name]), ...files], at),
      ...[needed.join("; "), measure, "", ""],
    ];
  });
}

/** The files of a step; where all that is printed or cut is meant, they are counted. */
function filesText(files: readonly string[], at: string): string {
  return files.length > 8 ? `${files.length} files: all that the ${at} makes` : files.join(", ");
}
