import { boardTop } from "../../instrument/fingerboard/surface.ts";
import { profileOf } from "../../instrument/neck/profile.ts";
import { neckStations } from "../../instrument/neck/profile-input.ts";
import { dimensionOf } from "../../order/spec.ts";
import { stepKey } from "../../step/step-key.ts";
import { nutGauge } from "../gauges/nut-gauge.ts";
import { sectionGauge } from "../gauges/section-gauge.ts";
import type { Model } from "../model.ts";
import type { SolidFile, SolidFiles } from "./solid-file.ts";

/** How far outside of a plate's faces its hollow is still drawn, mm, so that it is cut right through. */
const over = 0.5;

const use = "it measures, and never guides a cutter, a clamp or a guard";

/**
 * The neck's printed gauges: one for the section at each station, and one for its width at the nut. The same for either hand,
 * since the neck's sections are alike on both sides, and lettering isn't turned over.
 */
export const gaugeFiles: SolidFiles = (model) => [...sectionGauges(model), nutWidthGauge(model)];

function plate({ spec }: Model) {
  return {
    thickness: dimensionOf(spec, "gauge.thickness"),
    clearance: dimensionOf(spec, "gauge.clearance"),
  };
}

function sectionGauges(model: Model): SolidFile[] {
  const { spec, instrument } = model;
  const { thickness, clearance } = plate(model);
  const at = profileOf(instrument.neckProfile);
  return neckStations(spec).map(({ name, x }): SolidFile => {
    const { form } = at(x);
    const [before, behind] = [-1, 1].map((side) => at(x + side * (thickness / 2 + over)).form);
    const input = {
      ...{ before: before!, middle: form, behind: behind!, over, thickness, clearance },
      lines: [
        `${spec.order} ${/^\d/.test(name) ? "" : name.toUpperCase()}`.trim(),
        `X ${x} T ${(boardTop(instrument.surface, x, 0) + form.depth).toFixed(2)}`,
        `WOOD ${form.depth.toFixed(2)}`,
      ],
    };
    return {
      ...{ name: `gauge-${name}`, folder: "printed", part: "neck" },
      what: `printed gauge for the neck's section ${x} mm from the nut, laid on from the back: ${use}`,
      key: stepKey(sectionGauge, input),
      solid: (store) => store.answer(sectionGauge, input).value,
    };
  });
}

function nutWidthGauge(model: Model): SolidFile {
  const {
    spec,
    instrument: { taper },
  } = model;
  const input = {
    ...{ taper, ...plate(model) },
    lines: [spec.order, `NUT WIDTH ${taper.nut.toFixed(2)}`],
  };
  return {
    ...{ name: "gauge-nut-width", folder: "printed", part: "neck" },
    what: `printed gauge for the neck's width at the nut, laid over the front before the board is on: ${use}`,
    key: stepKey(nutGauge, input),
    solid: (store) => store.answer(nutGauge, input).value,
  };
}
