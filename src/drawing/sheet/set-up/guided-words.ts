import type { Finding } from "../../../checks/check.ts";
import { machineCautions } from "../../../workshop/cautions/machine-cautions.ts";
import { guideOffset } from "../../../workshop/guided/guide-offset.ts";
import { sawWander } from "../../../workshop/guided/passes.ts";
import { overLength, templateThickness } from "../../../workshop/guided/set-up.ts";
import { inMm, type SetUpStep } from "../../../workshop/sequence/work-step.ts";
import type { MadeFixture } from "./guided-picture-of.ts";
import type { SetUpWords } from "./set-up-words.ts";
import { toldOf } from "./told-of.ts";
import { signedMm, stripWords, toolRows, toolsMeasured } from "./tool-rows.ts";

/** How true a template's cut edge and a shaped edge come out, mm (G: default, confirm). */
const shaped = 0.2;

/** The columns of a table of passes along a guided edge. */
const passColumns = [
  { name: "PASS", share: 9 },
  { name: "GUIDE, MEASURED", share: 45 },
  { name: "D", share: 12 },
  { name: "TAKES", share: 12 },
  { name: "LEAVES", share: 12 },
  { name: "DONE", share: 12 },
];

/** What is written on the sheet of a fixture's set-up; `found` is what the checks found of its file. */
export function guidedWords(fixture: MadeFixture, at: SetUpStep, found: readonly Finding[]): SetUpWords {
  const { setUp, allowance, thickness, template } = fixture;
  const all = inMm(allowance + sawWander);
  return {
    cautions: machineCautions(setUp.machine, template),
    settings: settingsOf(fixture, at),
    passes: { columns: passColumns, rows: passesOf(fixture) },
    strip: stripWords(setUp, "wood and thickness"),
    measured: [
      ...toolsMeasured(setUp),
      ["Thickness of the work there", inMm(thickness)],
      ["Wood outside the line", `${all} at most`],
      ["Finished edge to its outline", `within ${inMm(shaped)} (G)`],
      ["Set up by, looked over by", ""],
    ],
    remarks: remarksOf(fixture),
    ...toldOf(found),
  };
}

function settingsOf(fixture: MadeFixture, at: SetUpStep): [string, string][] {
  const { setUp, thickness, sheet } = fixture;
  const { up } = at.setUp;
  const { cutter, guide } = setUp;
  return [
    ...toolRows(setUp),
    [
      "Height",
      `cuts ${inMm(cutter.length)} of ${inMm(thickness)} + ${overLength}; ${guide.kind} ${inMm(guide.height)} high on a template edge ${inMm(sheet?.kind === "ok" ? sheet.thickness : templateThickness)} thick`,
    ],
    ["Table", "0 degrees, square to the spindle"],
    [
      "Work",
      `${at.part}, ${inMm(thickness)} thick there, ${up} up; datum ${at.datum}; still square: ${at.square}`,
    ],
  ];
}

function passesOf({ setUp: { cutter, guide, first, passes } }: MadeFixture): string[][] {
  let left = passes.reduce((sum, { takes }) => sum + takes, 0);
  return passes.map(({ guide: id, takes }, i) => {
    left -= takes;
    const taken = first !== null && id === first.id ? first : guide;
    return [
      ...[String(i + 1), `${id} ${inMm(taken.diameter)} (${taken.measured})`],
      ...[signedMm(guideOffset(cutter.diameter, taken.diameter)), inMm(takes), inMm(Math.max(0, left)), ""],
    ];
  });
}

function remarksOf({ grain, edge, sheet, said }: MadeFixture): string[] {
  const lengths = (["with", "along", "against", "end grain"] as const).map(
    (one) => `${one} ${Math.round(grain?.[one] ?? 0)}`,
  );
  const places = edge.places.map(({ kind, x, y, length, depth }) => {
    const what = kind === "hollow" ? "hollow that the cutter can't touch" : "corner that comes out rounded";
    return `By hand: ${what}, ${inMm(length)} long, ${depth === null ? "not reached at all" : `${inMm(depth)} deep`}, at ${inMm(x)}, ${inMm(y)}`;
  });
  const glued = sheet?.kind === "ok" && (sheet.layers ?? 1) > 1 ? `${sheet.layers} layers glued, ` : "";
  const from =
    sheet?.kind === "ok"
      ? [
          `Template and base in one from ${sheet.sheet}, ${glued}${inMm(sheet.thickness)} thick, blank ${inMm(sheet.length)} by ${inMm(sheet.width)}`,
        ]
      : [];
  return [
    ...said,
    `Grain along the cut, mm: ${lengths.join(", ")}. Light cuts where against`,
    ...places,
    ...from,
  ];
}
