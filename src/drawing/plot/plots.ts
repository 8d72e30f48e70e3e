import { stringGaps } from "../../instrument/strings/gaps.ts";
import { dimensionOf } from "../../order/spec.ts";
import type { Store } from "../../step/store.ts";
import type { Model } from "../../workshop/model.ts";
import type { PlotFile } from "./plot-file.ts";
import { stringHeightsPlot } from "./string-heights-plot.ts";
import { tensionPlot } from "./tension-plot.ts";

/** Every plot, in the order in which a pack lists them. */
export const plotFiles: readonly PlotFile[] = [
  {
    ...{ name: "tension", part: "strings", heading: "TENSION OF EACH STRING" },
    what: "plot of each string's tension, with what is usual for it",
    of: ({ spec, forces }, store) =>
      store.answer(tensionPlot, {
        strings: spec.strings.map(({ name, usual }, i) => {
          return { name, tension: forces.strings.tensions[i]!, usual };
        }),
      }),
  },
  {
    ...{ name: "string-heights", part: "strings", heading: "HEIGHTS ALONG THE STRINGS" },
    what: "plot of each string's gap over the board, on to the bridge, with the board's surface under it",
    of: (model, store) => store.answer(stringHeightsPlot, heightsInput(model, store)),
  },
];

/** Into how many pieces the board's surface is cut along a string: even, so that halfway is one of their ends. */
const pieces = 32;

function heightsInput({ spec, instrument }: Model, store: Store) {
  const { layout, heights, surface } = instrument;
  const stringLength = dimensionOf(spec, "string.length");
  const passing = (where: "nut" | "bridge") => layout[where].map((y, i) => ({ y, z: heights[where][i]! }));
  const gaps = store.answer(stringGaps, {
    ...{ stringLength, board: surface, nut: passing("nut"), bridge: passing("bridge"), pieces },
    diameters: spec.strings.map(({ diameter }) => diameter),
  }).value;
  return {
    ...{ stringLength, boardLength: surface.taper.length },
    frets:
      instrument.fretSlots === null
        ? null
        : {
            places: instrument.fretSlots.slots.map(({ x }) => x),
            crown: dimensionOf(spec, "fret.crown.height"),
          },
    strings: spec.strings.map(({ name }, i) => ({ name, ...gaps[i]! })),
  };
}
