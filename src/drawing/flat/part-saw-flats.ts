import type { Extents } from "../../geometry/measure.ts";
import { hasSawDrawing, type SawDrawing, sawDrawings } from "../../order/saw-names.ts";
import { dimensionOf } from "../../order/spec.ts";
import { bandsawCautions } from "../../workshop/cautions/bandsaw.ts";
import { sawnBlankCautions } from "../../workshop/cautions/sawn-blank.ts";
import type { Model } from "../../workshop/model.ts";
import { type PartSawing, sawingNamed } from "../../workshop/part-sawing.ts";
import type { Way } from "../../workshop/stock/ways.ts";
import type { FlatFile } from "./flat-file.ts";
import { type PartSawInput, partSawFlat } from "./part-saw.ts";

/** The machine files that the blanks of wings, body and fingerboard are sawn to. */
export const partSawFlats: readonly FlatFile[] = (Object.keys(sawDrawings) as SawDrawing[]).map((file) => ({
  ...{ name: file, folder: "outlines", part: sawDrawings[file] },
  seenFrom: file === "body-saw" ? "core's front" : "front",
  applies: (spec) => hasSawDrawing(spec, file),
  what: `saw lines on the ${sawDrawings[file]}'s blank, with each cut's set-up`,
  of: (model, store) => store.answer(partSawFlat, drawnFrom(model, sawingNamed(model.partSawing(), file))),
}));

function drawnFrom({ spec, instrument }: Model, sawing: PartSawing): PartSawInput {
  const { part, shape, blank, planed, stock, cuts, sequence } = sawing;
  const { saw, sawn } = cuts;
  const tilted = sequence.some(({ tilt }) => tilt !== 0);
  const side = part === "wing-bass" ? "bass" : "treble";
  return {
    ...{ turned: (part === "wing-bass") !== (spec.hand === "left"), part: shape.outline, blank, sawn },
    glued: stock.stock.kind === "ok" ? gluedAt(stock.stock.way, blank) : [],
    told: {
      ...{ board: stock.stock.kind === "ok" ? stock.stock.way : null, blank: stock.blank, planed },
      saw:
        saw.kind === "ok" ? { id: saw.id, throat: saw.throat, height: saw.height, blade: saw.blade } : null,
      ...{ allowance: dimensionOf(spec, "saw.allowance"), cuts: sequence },
      mitre: shape.kind === "wing" ? instrument.wings![side].place.cut.mitre : 0,
      pins:
        sawn.kind === "ok" && sawn.pins.kind === "ok" ? sawn.pins.pins.map(({ diameter }) => diameter) : [],
      before:
        shape.kind === "board" && spec.frets !== null
          ? ["FRET SLOTS ARE SAWN FIRST, WHILE THE BLANK'S EDGES ARE PARALLEL"]
          : [],
      cautions: [
        ...(tilted ? [sawnBlankCautions.tilted] : []),
        ...sawnBlankCautions.always,
        ...bandsawCautions,
      ],
    },
  };
}

/** Where a blank's pieces meet, edge to edge. */
function gluedAt({ lies, plies, ply }: Way, { minY }: Extents): number[] {
  return lies === "joined" ? Array.from({ length: plies - 1 }, (_, i) => minY + (i + 1) * ply) : [];
}
