import type { FittedSaw } from "../bandsaw/fitted-saws.ts";
import type { Model } from "../model.ts";

/**
 * One cut at the bandsaw, of whatever part: its drawing, which of the drawing's cuts it is, how the work lies, the table's tilt (degrees, as the machine
 * counts) and its fence, how thick the blank is as planed, how high the work is under the guide and the guide at most, mm, and what is taped back on before it.
 */
export type SawSetUp = {
  readonly file: string;
  readonly part: string;
  readonly cut: string;
  readonly onTable: string;
  readonly up: string;
  readonly tilt: number;
  readonly fence: string;
  readonly leads: "head" | "tail" | "either";
  readonly thickness: number;
  readonly work: number;
  readonly guide: number;
  readonly tapedBack: string;
  readonly saw: FittedSaw | null;
};

/** Every cut at the bandsaw: the neck's two, then those of wings or body and fingerboard, in their order. */
export function sawSetUps(model: Model): readonly SawSetUp[] {
  return [...neckSetUps(model), ...partSetUps(model)];
}

function neckSetUps({ instrument, sawing }: Model): SawSetUp[] {
  const { saw } = sawing.cuts;
  const { width, thickness } = instrument.neckBlank;
  return sawing.sequence.map(({ outline, onTable, up, work, guide, tapedBack }) => ({
    ...{ file: `neck-saw-${outline}`, part: "neck", cut: outline, onTable, up, tilt: 0, fence: "none" },
    ...{ leads: "either", thickness: outline === "plan" ? thickness : width, work, guide, tapedBack },
    saw: saw.kind === "ok" ? saw : null,
  }));
}

function partSetUps(model: Model): SawSetUp[] {
  return model.partSawing().flatMap(({ file, part, planed, cuts: { saw }, sequence }) =>
    sequence.map(({ cut, onTable, up, tilt, fence, leads, work, guide, tapedBack }) => ({
      ...{ file, part, cut, onTable, up, tilt, fence, leads, thickness: planed, work, guide, tapedBack },
      saw: saw.kind === "ok" ? saw : null,
    })),
  );
}

/** The cuts of one drawing, in their order. */
export function sawSetUpsOf(model: Model, file: string): readonly SawSetUp[] {
  return sawSetUps(model).filter((one) => one.file === file);
}
