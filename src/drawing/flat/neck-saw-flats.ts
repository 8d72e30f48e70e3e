import { dimensionOf } from "../../order/spec.ts";
import { blankInPlan, blankInSide } from "../../workshop/blank-place.ts";
import { bandsawCautions } from "../../workshop/cautions/bandsaw.ts";
import type { Model } from "../../workshop/model.ts";
import type { FlatFile } from "./flat-file.ts";
import { type NeckSawInput, neckSawFlat } from "./neck-saw.ts";
import type { SawNotesInput } from "./saw-notes.ts";

/** The machine files that the neck's blank is sawn to, from two ways. */
export const neckSawFlats: readonly FlatFile[] = [
  {
    ...{ name: "neck-saw-plan", folder: "outlines", part: "neck", seenFrom: "front" },
    what: "saw lines on the neck's blank from the front, the first of its two cuts",
    of: (model, store) => store.answer(neckSawFlat, sawn(model, "plan")),
  },
  {
    ...{ name: "neck-saw-side", folder: "outlines", part: "neck" },
    seenFrom: { right: "bass side", left: "treble side" },
    what: "saw lines on the neck's blank from the side, the second of its two cuts",
    of: (model, store) => store.answer(neckSawFlat, sawn(model, "side")),
  },
];

function sawn(model: Model, view: "plan" | "side"): NeckSawInput {
  const { spec, instrument, sawing } = model;
  const blank = view === "plan" ? blankInPlan(sawing.place) : blankInSide(sawing.place);
  return {
    ...{ view, hand: spec.hand, part: instrument.neckProfile[view], told: told(model) },
    ...{ blank, sawn: sawing.cuts[view] },
  };
}

function told({ spec, instrument, sawing: { stock, cuts, sequence } }: Model): SawNotesInput {
  return {
    ...{ blank: instrument.neckBlank, allowance: dimensionOf(spec, "saw.allowance"), cuts: sequence },
    ...{ board: stock.kind === "ok" ? stock.way : null, cautions: bandsawCautions },
    saw: cuts.saw.kind === "ok" ? withoutKind(cuts.saw) : null,
  };
}

function withoutKind({ id, throat, height, blade }: Extract<Model["sawing"]["cuts"]["saw"], { kind: "ok" }>) {
  return { id, throat, height, blade };
}
