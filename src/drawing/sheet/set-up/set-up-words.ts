import type { Caution } from "../../../workshop/cautions/caution.ts";
import { heading, paragraph, type Section } from "../bench/block.ts";
import { inCapitals } from "../bench/in-capitals.ts";
import { signalMeanings, signalPanel } from "../bench/signal-panel.ts";
import { type Column, table } from "../bench/table.ts";

/** What is written on a set-up's sheet, in its own letters; rows are cells in the order of their columns. */
export type SetUpWords = {
  readonly cautions: readonly Caution[];
  readonly settings: readonly (readonly [what: string, value: string])[];
  /** One row a pass; none at a saw. */
  readonly passes: {
    readonly columns: readonly Column[];
    readonly rows: readonly (readonly string[])[];
  } | null;
  /** What a strip of scrap must read, and how it is cut; null where none is cut. */
  readonly strip: string | null;
  /** What is written down when it is measured, and what it should be. */
  readonly measured: readonly (readonly [what: string, should: string])[];
  readonly remarks: readonly string[];
  /** Checks that ask to be attended to, and refusals that a person overruled, with the reason. */
  readonly attended: readonly string[];
  readonly overruled: readonly string[];
};

/** Room for what is written by hand, mm. */
const byHand = 7.5;

/** The sections of a set-up's sheet, the gravest first: cautions, what was overruled, settings, passes, test strip, what is measured. */
export function setUpSections(words: SetUpWords): Section[] {
  const { cautions, settings, passes, strip, measured, remarks, attended, overruled } = words;
  const pairs = (rows: readonly (readonly [string, string])[]) => rows.map((row) => row.map(inCapitals));
  return [
    {
      head: heading("CAUTIONS"),
      rows: [
        paragraph("LOCAL CODES, THE MACHINE'S MANUAL AND A COMPETENT PERSON COME FIRST"),
        ...cautions.map(signalPanel),
        paragraph(signalMeanings),
      ],
    },
    ...listed("OVERRULED BY A PERSON, WITH THE REASON", overruled),
    ...listed("CHECKS THAT ASK TO BE ATTENDED TO", attended),
    table(
      "SETTINGS",
      [
        { name: "WHAT", share: 26 },
        { name: "SET TO", share: 74 },
      ],
      pairs(settings),
    ),
    ...passSections(passes),
    ...stripSections(strip),
    {
      ...table(
        "WRITE DOWN WHAT WAS MEASURED",
        [
          { name: "WHAT", share: 40 },
          { name: "SHOULD BE", share: 25 },
          { name: "MEASURED", share: 18 },
          { name: "BY, DATE", share: 17 },
        ],
        measured.map((row) => [...row.map(inCapitals), "", ""]),
        { least: byHand },
      ),
      whole: true,
    },
    ...listed("TO KNOW", remarks),
  ];
}

function passSections(passes: SetUpWords["passes"]): Section[] {
  if (passes === null) return [];
  const rows = passes.rows.map((row) => row.map(inCapitals));
  return [{ ...table("PASSES", passes.columns, rows), whole: true }];
}

function stripSections(strip: SetUpWords["strip"]): Section[] {
  if (strip === null) return [];
  const columns = ["READING 1", "READING 2", "READING 3", "BY, DATE"].map((name) => ({ name, share: 1 }));
  const empty = columns.map(() => "");
  return [
    { ...table("TEST STRIP, BEFORE THE WORK", columns, [empty], { least: byHand }), whole: true },
    { head: null, rows: [paragraph(inCapitals(strip))] },
  ];
}

function listed(title: string, lines: readonly string[]): Section[] {
  if (lines.length === 0) return [];
  return [{ head: heading(title), rows: lines.map((line) => paragraph(`- ${inCapitals(line)}`)) }];
}
