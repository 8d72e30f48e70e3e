import { heading, paragraph, type Section } from "../bench/block.ts";
import { inCapitals } from "../bench/in-capitals.ts";
import { type Column, table } from "../bench/table.ts";
import type { TravellerWords } from "./traveller-words.ts";

/** Least height of rows that something is written into by hand, mm. */
const byHand = 7.5;

const columns = (...shares: readonly (readonly [name: string, share: number])[]): Column[] =>
  shares.map(([name, share]) => ({ name, share }));

const lists = {
  head: columns(["WHAT", 22], ["THIS ORDER", 78]),
  parts: columns(["PART", 20], ["WOOD", 18], ["BLANK", 22], ["FROM BOARD", 26], ["FINISHED G", 14]),
  cuts: columns(
    ...([
      ["BOARD", 22],
      ["PIECE", 20],
      ["LENGTH", 12],
      ["WIDTH", 11],
    ] as const),
    ...([
      ["PLANED TO", 13],
      ["FROM END, EDGE", 20],
      ["CUT", 8],
    ] as const),
  ),
  bought: columns(["COUNT", 9], ["WHAT", 32], ["SIZE", 36], ["WHERE", 32], ["HERE", 9]),
  steps: columns(
    ...([
      ["NO", 4],
      ["AT", 10],
      ["WHAT IS DONE", 39],
      ["DATUM; STILL SQUARE", 22],
      ["THICK", 8],
    ] as const),
    ...([
      ["FILES", 28],
      ["NEEDS, FROM WHOM", 28],
      ["MEASURE", 22],
      ["MEASURED", 14],
    ] as const),
    ...([["BY, DATE", 12]] as const),
  ),
  signed: columns(["WHAT", 40], ["NAME", 30], ["DATE", 15], ["SIGNED", 15]),
};

/** Numbers and lists of a traveller, laid in two columns: whose it is, what stands against it, parts, cut list, what is bought. */
export function frontSections(words: TravellerWords): Section[] {
  const { head, refused, held, overruled, attended, notLookedAt, parts, cuts, cutRemarks, bought } = words;
  const capitals = (rows: readonly (readonly string[])[]) => rows.map((row) => row.map(inCapitals));
  return [
    table(`TRAVELLER OF ORDER ${inCapitals(words.order)}`, lists.head, capitals(head)),
    {
      head: null,
      rows: [
        paragraph("LOCAL CODES, THE MACHINE'S MANUAL AND A COMPETENT PERSON COME FIRST"),
        paragraph("THIS SHEET GOES WITH THE WORK: WHAT IS MEASURED IS WRITTEN DOWN WHEN IT IS DONE"),
      ],
    },
    listed("SET-UPS THAT ARE REFUSED AND HAVE NO SHEET", refused, "NONE IS REFUSED"),
    listed("FILES HELD BACK", held, "NONE IS HELD BACK"),
    listed("OVERRULED BY A PERSON, WITH THE REASON", overruled, "NOTHING IS OVERRULED"),
    listed("CHECKS THAT ASK TO BE ATTENDED TO", attended, "NONE ASKS"),
    ...(notLookedAt.length === 0 ? [] : [listed("CHECKS THAT NOBODY LOOKED AT", notLookedAt, "")]),
    table("PARTS AND THEIR BLANKS, MM", lists.parts, capitals(parts)),
    table("CUT LIST, MM", lists.cuts, capitals(cuts)),
    { head: null, rows: cutRemarks.map((line) => paragraph(inCapitals(line))) },
    {
      ...table("BOUGHT: MEASURE EACH BEFORE ITS RECESS IS CUT", lists.bought, capitals(bought)),
      whole: true as const,
    },
  ].filter(({ rows }) => rows.length > 0);
}

/** The sequence of work over the whole width, and who signs for it all. */
export function workSections({ steps }: TravellerWords): Section[] {
  const done = ["Sequence of work gone through and agreed", "Instrument measured against its report"];
  return [
    table(
      "SEQUENCE OF WORK",
      lists.steps,
      steps.map((row) => row.map(inCapitals)),
      { least: byHand },
    ),
    {
      ...table(
        "SIGNED",
        lists.signed,
        done.map((what) => [inCapitals(what), "", "", ""]),
        { least: byHand },
      ),
      whole: true,
    },
  ];
}

function listed(title: string, lines: readonly string[], none: string): Section {
  const all = lines.length === 0 ? [none] : lines;
  return { head: heading(title), rows: all.map((line) => paragraph(`- ${inCapitals(line)}`)) };
}
