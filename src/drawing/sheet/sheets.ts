import { dimensionOf } from "../../order/spec.ts";
import { usual } from "../../order/usual-tolerance.ts";
import type { Answer, Store } from "../../step/store.ts";
import type { Model } from "../../workshop/model.ts";
import { headFaceOf } from "../flat/neck-flats.ts";
import type { NeckTolerances } from "./neck/input.ts";
import { neckSheet } from "./neck/neck-sheet.ts";
import { papersOf } from "./papers.ts";
import type { Sheet } from "./sheet.ts";

/** A sheet of a pack: its name without ending, its folder, what it shows, and the flat drawings whose refusal holds it back too. */
export type SheetFile = {
  readonly name: string;
  readonly folder: "bench";
  readonly part: string;
  readonly what: string;
  readonly seenFrom: string;
  readonly shows: readonly string[];
  readonly of: (model: Model, store: Store) => Answer<Sheet>;
};

/** Every sheet, in the order in which a pack lists them. */
export const sheetFiles: readonly SheetFile[] = [
  {
    ...{ name: "neck-sheet", folder: "bench", part: "neck", seenFrom: "front" },
    what: "sheet of the neck: plan, side, sections and the head's face with their dimensions",
    shows: ["neck-plan", "neck-side", "head-face"],
    of: (model, store) => store.answer(neckSheet, neckInput(model)),
  },
];

function neckInput(model: Model) {
  const { spec, instrument } = model;
  const { neckProfile, neckSections, neckRods, neckPins } = instrument;
  const of = (id: string) => dimensionOf(spec, id);
  return {
    ...{ hand: spec.hand, papers: papersOf(spec.shop.paper), plan: neckProfile.plan, side: neckProfile.side },
    ...{ nutThickness: of("nut.thickness"), boardLength: of("fingerboard.length") },
    ...{ stringLength: of("string.length"), heelEnd: of("neck.heel.end"), headAngle: of("head.angle") },
    transition: { start: of("neck.transition.start"), end: of("neck.transition.end") },
    core: instrument.core,
    face: headFaceOf(model),
    sections: neckSections.map(({ name, x, path }) => ({ name, x, path })),
    rods: neckRods.map(({ path, depth }) => ({ path, depth })),
    pins: neckPins.map((pin) => ({
      ...{ ...pin, fit: spec.values[`pin.${pin.id}`]!.tolerance },
      place: spec.values[`pin.${pin.id}.at`]?.tolerance ?? null,
    })),
    tolerances: tolerancesOf(model),
  };
}

function tolerancesOf({ spec }: Model): NeckTolerances {
  const of = (id: string) => spec.values[id]!.tolerance;
  return {
    usual: usual.length,
    ...{ nutThickness: of("nut.thickness"), boardLength: of("fingerboard.length") },
    ...{ stringLength: of("string.length"), heelEnd: of("neck.heel.end"), corner: of("neck.corner") },
    ...{ transitionStart: of("neck.transition.start"), transitionEnd: of("neck.transition.end") },
    ...{ coreStart: of("core.start"), coreEnd: of("core.end"), coreDrop: of("core.drop") },
    ...{ coreSlope: of("core.slope"), coreWidth: of("core.width"), coreDepth: of("core.depth") },
    ...{ stationNut: of("neck.station.nut"), stationHeel: of("neck.station.heel") },
    ...{ headAngle: of("head.angle"), headThickness: of("head.thickness"), headMargin: of("head.margin") },
    ...{ headRow: of("head.row"), headColumn: of("head.column"), headEdge: of("head.edge") },
    ...{ headShoulder: of("head.shoulder"), headCorner: of("head.corner"), hole: of("tuner.hole") },
  };
}
