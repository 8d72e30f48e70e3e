import type { PlotFile } from "./plot-file.ts";
import { tensionPlot } from "./tension-plot.ts";

/** Every plot, in the order in which a pack lists them. */
export const plotFiles: readonly PlotFile[] = [
  {
    ...{ name: "tension", part: "strings", heading: "TENSION OF EACH STRING" },
    what: "plot of each string's tension, with what is usual for it",
    of: ({ spec, forces }, store) =>
      store.answer(tensionPlot, {
        strings: spec.strings.map(({ name, usual }, i) => ({
          ...{ name, tension: forces.strings.tensions[i]! },
          usual: usual && { least: usual.least, most: usual.most },
        })),
      }),
  },
];
