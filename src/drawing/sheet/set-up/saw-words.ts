import type { Finding } from "../../../checks/check.ts";
import { sides } from "../../../order/side.ts";
import { dimensionOf } from "../../../order/spec.ts";
import { bandsawCautions } from "../../../workshop/cautions/bandsaw.ts";
import type { Caution } from "../../../workshop/cautions/caution.ts";
import { sawnBlankCautions } from "../../../workshop/cautions/sawn-blank.ts";
import type { Model } from "../../../workshop/model.ts";
import type { SawSetUp } from "../../../workshop/sequence/saw-set-ups.ts";
import { inMm, type WorkStep } from "../../../workshop/sequence/work-step.ts";
import type { SetUpWords } from "./set-up-words.ts";
import { toldOf } from "./told-of.ts";

/** What is written on the sheet of one cut at the bandsaw; `found` is what the checks found of its drawing. */
export function sawWords(model: Model, setUp: SawSetUp, at: WorkStep, found: readonly Finding[]): SetUpWords {
  const { spec } = model;
  const { tilt, guide, work, thickness } = setUp;
  const of = (id: string) => dimensionOf(spec, id);
  const [allowance, least] = [of("saw.allowance"), of("saw.least")];
  return {
    cautions: cautionsOf(setUp),
    settings: [...settingsOf(setUp, at, allowance), ...fenceOf(model, setUp)],
    passes: null,
    strip: null,
    measured: [
      tilt === 0
        ? ["Blade to table, by a square", "90 degrees"]
        : ["Table's tilt, by a gauge", `${Math.abs(tilt).toFixed(2)} degrees`],
      ["Thickness of the blank", inMm(thickness)],
      ["Height of the work at the blade", inMm(work)],
      ["Upper guide over the table", `${inMm(guide)} at most`],
      ["Wood left outside the line", `${inMm(allowance)}, nowhere under ${inMm(least)}`],
      ["Set up by, looked over by", ""],
    ],
    remarks: [
      ...pinWords(model, setUp),
      "In each cut the relief cuts come first: stop on the line",
      "A line is the middle of the kerf; where it runs out through a face nothing is sawn off",
    ],
    ...toldOf(found),
  };
}

function cautionsOf({ file, tilt }: SawSetUp): readonly Caution[] {
  if (file.startsWith("neck-")) return bandsawCautions;
  return [...(tilt === 0 ? [] : [sawnBlankCautions.tilted]), ...sawnBlankCautions.always, ...bandsawCautions];
}

function settingsOf(setUp: SawSetUp, at: WorkStep, allowance: number): [string, string][] {
  const { saw, onTable, up, tilt, fence, leads, work, guide, thickness, tapedBack } = setUp;
  const other = tilt < 0 ? ", the other way" : "";
  return [
    [
      "Machine",
      saw === null
        ? "no bandsaw"
        : `${saw.id} (bandsaw), throat ${inMm(saw.throat)}, height ${inMm(saw.height)}`,
    ],
    [
      "Blade",
      saw === null
        ? "none: the lines stand without a kerf"
        : `${inMm(saw.blade.width)} wide, kerf ${inMm(saw.blade.kerf)}, follows no less than radius ${inMm(saw.blade.radius)} (S)`,
    ],
    [
      "Table",
      tilt === 0
        ? "0 degrees, square to the blade"
        : `tilted ${Math.abs(tilt).toFixed(2)} degrees${other}, fence on the ${fence}, ${leads} end first`,
    ],
    ["Upper guide", `${inMm(guide)} over the table at most, ${inMm(guide - work)} over the work (S)`],
    ["Work", `${at.part}, ${inMm(thickness)} thick, ${inMm(work)} high at the blade`],
    ["On the table", `${onTable}; up: ${up}; still square: ${at.square}`],
    ["Line", `${inMm(allowance)} outside the finished outline, and half a kerf`],
    ...(tapedBack === "nothing"
      ? []
      : [["Before it", `tape ${tapedBack} back where it was`] as [string, string]]),
  ];
}

/** How a wing lies at a tilted table: along a fence on the low side, packed off that by its joint line's turn from its grain. */
function fenceOf({ instrument: { wings } }: Model, { part, cut, tilt, up }: SawSetUp): [string, string][] {
  const side = sides.find((one) => part === `wing-${one}`);
  if (side === undefined || wings === null || cut !== "joint" || tilt === 0) return [];
  const { mitre } = wings[side].place.cut;
  const pack = 100 * Math.tan((Math.abs(mitre) * Math.PI) / 180);
  const packed =
    pack < 0.01 ? "" : `, packed off it at the ${mitre > 0 ? "head" : "tail"} by ${pack.toFixed(2)} in 100`;
  return [
    [
      "Lies",
      `wing on the low side, the blank's far edge along the fence${packed} (mitre ${mitre.toFixed(2)}); the ${up} arris comes out sharp`,
    ],
  ];
}

/** The pins in the waste, which carry the lines to the other face. */
function pinWords(model: Model, { file }: SawSetUp): string[] {
  const sawn = model.partSawing().find((one) => one.file === file)?.cuts.sawn;
  if (sawn?.kind !== "ok" || sawn.pins.kind === "none") return [];
  const sizes = sawn.pins.pins.map(({ diameter }) => inMm(diameter)).join(" and ");
  return [`Index pins ${sizes} are bored right through the waste before the first cut, square`];
}
