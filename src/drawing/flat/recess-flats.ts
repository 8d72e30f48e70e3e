import { type RecessPart, recessParts } from "../../order/recess-part.ts";
import { dimensionOf, type Spec } from "../../order/spec.ts";
import { coverFlat } from "./cover.ts";
import type { FlatFile } from "./flat-file.ts";
import { partFaceFlat } from "./part-face.ts";

/** The files of what is sunk into parts from the back, and into the core from its front; a wing's or a body's front has its own drawing. */
export const recessFlats: readonly FlatFile[] = [
  face("neck", "front"),
  ...recessParts.map((part) => face(part, "back")),
];

function face(part: RecessPart, from: "front" | "back"): FlatFile {
  const core = part === "neck";
  return {
    ...{ name: `${part}-${from}`, folder: "outlines", part },
    seenFrom: core ? `core's ${from}` : "back",
    applies: ({ recesses }) => recesses.some((recess) => recess.in === part && recess.from === from),
    what: `what is sunk into the ${core ? "core" : part} from its ${from}, with its covers' ledges and the wires' bores`,
    of: ({ spec, instrument }, store) => {
      const { path, thickness, pockets, drilled } = instrument.sunken[part]!;
      return store.answer(partFaceFlat, {
        ...{ hand: spec.hand, name: core ? "core" : part.replace(/^wing-(.*)$/, "$1 wing"), face: from },
        ...{ path, thickness, drilled, pockets: pockets.filter((pocket) => pocket.from === from) },
      });
    },
  };
}

/** The file of each cover of a design, by its recess. */
export function coverFlats({ recesses }: Spec): FlatFile[] {
  return recesses
    .filter(({ cover }) => cover)
    .map(({ id }) => ({
      ...{ name: `cover-${id}`, folder: "outlines", part: coverPart, seenFrom: "outside" },
      what: `the cover over recess ${id}, with its screws' holes`,
      of: ({ spec, instrument }, store) => {
        const { cover, from } = instrument.covers.find(({ recess }) => recess.id === id)!.recess;
        const { path, screws, thickness } = cover!;
        return store.answer(coverFlat, {
          ...{ hand: spec.hand, id, face: from, path, screws, thickness },
          screw: dimensionOf(spec, "cover.screw"),
        });
      },
    }));
}

/** What all covers are called among the parts that can be asked for alone. */
export const coverPart = "cover";
