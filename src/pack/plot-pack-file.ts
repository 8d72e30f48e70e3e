import type { PlotFile } from "../drawing/plot/plot-file.ts";
import { titledPlot } from "../drawing/plot/titled-plot.ts";
import { sheetSvgText } from "../files/svg/write-sheet-svg.ts";
import { fingerprintOf } from "../step/key.ts";
import type { Store } from "../step/store.ts";
import type { Model } from "../workshop/model.ts";
import type { PackFile } from "./pack-file.ts";

/** A plot as a file of a pack, titled with whose it is. */
export function plotPackFile(file: PlotFile, model: Model, store: Store): PackFile {
  const { order, voice, count, hand } = model.spec;
  const { key, value } = file.of(model, store);
  const fingerprint = fingerprintOf(key);
  const plot = titledPlot(value, { heading: file.heading, order, voice, count, hand, fingerprint });
  return {
    ...{ path: `plots/${file.name}.svg`, content: sheetSvgText(plot, `${order} ${file.name}`) },
    ...{ what: file.what, fingerprint, readBack: null, pictureOf: file.part },
  };
}
