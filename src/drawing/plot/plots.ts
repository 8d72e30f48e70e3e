import { stringGaps } from "../../instrument/strings/gaps.ts";
import { dimensionOf } from "../../order/spec.ts";
import { usualTension } from "../../physics/usual-tension.ts";
import type { Store } from "../../step/store.ts";
import type { Model } from "../../workshop/model.ts";
import type { BowAnglesPlotInput } from "./bow-angles-input.ts";
import { bowAnglesPlot } from "./bow-angles-plot.ts";
import { bridgeLoadPlot } from "./bridge-load-plot.ts";
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
        strings: spec.strings.map(({ name, semitones }, i) => ({
          ...{ name, tension: forces.strings.tensions[i]! },
          usual: usualTension(spec.voice, semitones) ?? null,
        })),
      }),
  },
  {
    ...{ name: "bridge-load", part: "bridge", heading: "LOAD AND LEAN ON THE BRIDGE" },
    what: "plot of what each string does to the bridge: its load and its lean",
    of: ({ spec, forces: { bridgeLoad } }, store) =>
      store.answer(bridgeLoadPlot, {
        strings: spec.strings.map(({ name }, i) => {
          const { load, lean } = bridgeLoad.strings[i]!;
          return { name, load, lean };
        }),
        all: { load: bridgeLoad.load, lean: bridgeLoad.lean },
      }),
  },
  {
    ...{ name: "string-heights", part: "strings", heading: "HEIGHTS ALONG THE STRINGS" },
    what: "plot of each string's gap over the board, on to the bridge, with the board's surface under it",
    of: (model, store) => store.answer(stringHeightsPlot, heightsInput(model, store)),
  },
  {
    ...{ name: "bow-angles", part: "bridge", heading: "BOW ANGLES" },
    what: "plot of the bow on the strings, seen from the tail: each inner string's range, the outermost tilts",
    of: (model, store) => store.answer(bowAnglesPlot, bowInput(model)),
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

function bowInput({ spec, instrument }: Model): BowAnglesPlotInput {
  const { bow, crown, layout, heights } = instrument;
  return {
    hand: spec.hand,
    crown: { y: crown.centre.x, z: crown.centre.y, radius: crown.radius },
    strings: spec.strings.map(({ name }, i) => ({
      ...{ name, y: layout.bridge[i]!, z: heights.bridge[i]! },
      // The bow's strings are the inner ones: the outer ones find none.
      range: bow.strings[i - 1] ?? null,
    })),
    // Every tilt of the plot is positive down to the treble side, the bow's own outermost ones down to their sides.
    outermost: { treble: bow.outermost.treble, bass: -bow.outermost.bass },
  };
}
