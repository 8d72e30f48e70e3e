import type { Finding } from "../../../checks/check.ts";
import { routerCautions } from "../../../workshop/cautions/router.ts";
import { inMm, type SetUpStep } from "../../../workshop/sequence/work-step.ts";
import type { MadeInside } from "./inside-picture-of.ts";
import type { SetUpWords } from "./set-up-words.ts";
import { toldOf } from "./told-of.ts";
import { signedMm, stripWords, toolRows, toolsMeasured } from "./tool-rows.ts";

/** The columns of a table of depths, one row an opening. */
const depthColumns = [
  { name: "OPENING", share: 30 },
  { name: "PLATE", share: 9 },
  { name: "DEPTH", share: 11 },
  { name: "SET, FROM THE WORK'S FACE", share: 40 },
  { name: "DONE", share: 12 },
];

/** What is written on the sheet of an inside template's set-up; `found` is what the checks found of its file. */
export function insideWords(inside: MadeInside, at: SetUpStep, found: readonly Finding[]): SetUpWords {
  const { setUp, openings, plates } = inside;
  return {
    cautions: routerCautions(setUp.machine.moves, "opening"),
    settings: [...toolRows(setUp), ...workRows(inside, at)],
    passes: {
      columns: depthColumns,
      rows: openings.map(({ id, depth, passes }, i) => [
        ...[id, String(plates[i]! + 1), depth.toFixed(2), passes.map((set) => set.toFixed(2)).join(", "), ""],
      ]),
    },
    strip: stripWords(setUp, "wood"),
    measured: [
      ...toolsMeasured(setUp),
      ...openings.map(({ id, depth }): [string, string] => [`Depth of ${id}`, depth.toFixed(2)]),
      ["Set up by, looked over by", ""],
    ],
    remarks: remarksOf(inside),
    ...toldOf(found),
  };
}

function workRows({ setUp, sheet, plates, packing }: MadeInside, at: SetUpStep): [string, string][] {
  const thick = sheet?.kind === "ok" ? `${sheet.sheet}, ${inMm(sheet.thickness)} thick` : "none";
  const pushed =
    setUp.machine.moves === "work" ? "push the work against the arrows" : "push the tool as the arrows show";
  const turns = setUp.machine.rotation === "ccw" ? "counter-clockwise" : "clockwise";
  return [
    ["Template", `${Math.max(...plates) + 1} of ${thick}; cutting length ${inMm(setUp.cutter.length)}`],
    ["Table", "0 degrees, square to the spindle"],
    ["Work", `${at.part}, ${at.setUp.up} up; datum ${at.datum}; still square: ${at.square}`],
    [
      "Packings",
      packing === null
        ? "as high as the work, beside it, under both ends"
        : `${packing.toFixed(2)} high, the board is arched`,
    ],
    ["Feed", `${turns} in an opening; ${pushed}`],
  ];
}

function remarksOf({ setUp, openings }: MadeInside): string[] {
  const { first, guide } = setUp;
  const hard = openings.flatMap(({ id, edge }) =>
    (edge?.kind === "ok" ? edge.places : []).flatMap(({ kind, x, y, length }) =>
      kind === "hollow"
        ? [
            `By hand: ${id}, hollow that the cutter can't touch, ${inMm(length)} long, at ${inMm(x)}, ${inMm(y)}`,
          ]
        : [],
    ),
  );
  return [
    "A closed edge has no run-in and needs none: the bit goes in at the circles, in waste, and the guide comes to the edge while the cutter turns free",
    ...(first === null
      ? []
      : [
          `First ${first.id} to all depths, d ${signedMm((setUp.cutter.diameter - first.diameter) / 2)}, then ${guide.id} in the same depths`,
        ]),
    ...hard,
  ];
}
