import { extentsOf } from "../../geometry/measure.ts";
import { allInsides, type InsideName, insideApplies } from "../../order/inside-names.ts";
import { routerCautions } from "../../workshop/cautions/router.ts";
import type { Inside, Opening } from "../../workshop/inside/inside.ts";
import { insideNamed } from "../../workshop/inside/insides.ts";
import type { FlatFile } from "./flat-file.ts";
import { type InsideFlatInput, insideFlat } from "./inside.ts";
import { insideNotes } from "./inside-notes.ts";
import { lettered } from "./lettered.ts";
import { toolsTold } from "./tools-told.ts";

/** The inside templates that recesses, ledges, mounts, cradles and inlays are cut through, each as it lies before whoever cuts. */
export const insideFlats: readonly FlatFile[] = allInsides.map((name) => {
  const { file, part, face } = name;
  return {
    ...{ name: file, folder: "fixtures", part, seenFrom: "front" },
    what:
      part === "fingerboard"
        ? "inside template of the inlays: plates, openings, guided edges, how deep, direction of the cut"
        : `inside template of what is routed into the ${part}'s ${face}: plates, openings, guided edges, how deep, direction of the cut`,
    seenAsCut: (model) => insideNamed(model.insides(), file).up,
    applies: (spec) => insideApplies(name, spec),
    remarks: (model, store) => {
      const { made } = drawnFrom(insideNamed(model.insides(), file));
      return made === null ? [] : store.answer(insideNotes, made.notes).value;
    },
    of: (model, store) => store.answer(insideFlat, drawnFrom(insideNamed(model.insides(), file))),
  } satisfies FlatFile;
});

function drawnFrom(inside: Inside): InsideFlatInput {
  const { chosen, setUp, layout, sheet, openings, plates, part, up, packing } = inside;
  const recesses = openings.map(({ recess }) => recess);
  if (setUp === null || layout === null || plates === null) {
    const none = openings.find(({ edge }) => edge !== null && edge.kind !== "ok");
    const missing =
      chosen.kind === "none" ? chosen.faults[0].why : `no guided edge: ${none?.id}, ${none?.edge?.kind}`;
    return { recesses, missing: lettered(missing), made: null };
  }
  return {
    ...{ recesses, missing: null },
    made: {
      ...{ part: inside.under, layout },
      openings: openings.map((opening, i) => {
        const { id, recess, feed } = opening;
        const { edge, plunge } = okOf(opening);
        return { id, recess, edge, plunge: plunge.at, arrows: feed!.tool, plate: plates[i]! };
      }),
      notes: {
        ...{ part, up, sheet: sheet!, packing, plates: Math.max(...plates) + 1 },
        ...linesOf(inside),
        ...toolsTold(setUp),
        cautions: routerCautions(setUp.machine.moves, "opening"),
        openings: openings.map((opening) => {
          const { id, depth, passes, recess } = opening;
          const { places, firstFits } = okOf(opening);
          const { minX, maxX, minY, maxY } = extentsOf([recess])!;
          const middle = { x: (minX + maxX) / 2, y: (minY + maxY) / 2 };
          return { id, depth, passes, places, firstFits, middle };
        }),
      },
    },
  };
}

function okOf({ id, edge }: Opening) {
  if (edge?.kind !== "ok") throw new RangeError(`opening ${id} has no edge`);
  return edge;
}

/** What a part's places are counted from along it, and the line that they are counted from across. */
function linesOf({ part }: InsideName): { readonly origin: string; readonly line: string } {
  if (part === "fingerboard") return { origin: "THE NUT", line: "CENTRELINE" };
  if (part === "neck" || part === "body")
    return { origin: "WHERE THE CORE'S FRONT BEGINS", line: "CENTRELINE" };
  return { origin: "THE JOINT LINE'S HEAD END", line: "JOINT LINE" };
}
