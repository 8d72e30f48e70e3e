import { step } from "../../step/step.ts";
import { type Marks, type Sheet, together } from "../sheet/sheet.ts";
import { type Axis, axisThrough, levelAxis, uprightAxis } from "./axis.ts";
import { numberText } from "./number-text.ts";
import { emptyPlot, said } from "./plot-paper.ts";
import { type HeightsOfString, heightsPanel } from "./string-heights-panel.ts";

/**
 * Lengths from the nut's edge and heights over a straightedge on the board under each string, mm; strings from the highest to
 * the lowest. `crown` is how high frets stand over the board.
 */
export type StringHeightsPlotInput = {
  readonly stringLength: number;
  readonly boardLength: number;
  readonly frets: { readonly places: readonly number[]; readonly crown: number } | null;
  readonly strings: readonly HeightsOfString[];
};

const columns = 2;

/** What a panel keeps on paper: for its upright axis, at its right, for the numbers under it, over its highest string; mm. */
const room = { left: 20, right: 5, under: 7, over: 7 } as const;

/** The least distance of two numbers on an upright axis, mm on paper. */
const apart = 4.4;

/** How strings run over the board and on to the bridge: a panel for each string, all at one scale. */
export const stringHeightsPlot = step("plot.string-heights", 1, (given: StringHeightsPlotInput): Sheet => {
  const plot = emptyPlot();
  const { frame, titleBox } = plot;
  const { strings, stringLength } = given;
  const rows = Math.ceil(strings.length / columns);
  const [low, high] = [frame.minY + 22, titleBox.minY - 1];
  const [wide, tall] = [(frame.maxX - frame.minX) / columns, (high - low) / rows];
  const values = [0, ...strings.flatMap(({ surface, bridge, end, nut }) => [...surface, bridge, end, nut])];
  // A little wood is seen under the hollow that is deepest.
  const reach = [...values, Math.min(...values) - (Math.max(...values) - Math.min(...values)) * 0.08];
  const panels = strings.map((string, i): Marks => {
    const left = frame.minX + (i % columns) * wide;
    const top = high - Math.floor(i / columns) * tall;
    const start = top - tall + room.under;
    const up = axisThrough(
      reach,
      start,
      top - room.over,
      Math.floor((tall - room.over - room.under) / apart),
    );
    const along = axisThrough([0, stringLength], left + room.left, left + wide - room.right, 8);
    return together([axes(along, up), heightsPanel(string, given, along, up)]);
  });
  const texts = notes(given).map((text, i) => said(text, frame.minX + 4, frame.minY + 14 - i * 5));
  return { ...plot, ...together([...panels, { lines: [], texts }]) };
});

function axes(along: Axis, up: Axis): Marks {
  return together([uprightAxis(up, along.start, "MM"), levelAxis(along, up.start, "")]);
}

function notes({ frets }: StringHeightsPlotInput): string[] {
  const over = frets === null ? "OVER THE BOARD" : `OVER FRETS (${numberText(frets.crown, 2)})`;
  return [
    "ALONG: MM FROM THE NUT. UP: MM OVER A STRAIGHTEDGE (THIN, DASHED PAST THE BOARD) FROM NUT TO BOARD'S END",
    "THICK: THE STRING'S UNDERSIDE. HATCHED: THE BOARD UNDER IT, AND HOW FAR IT IS HOLLOW HALFWAY",
    `NUMBERS, MM: GAP ${over} AT NUT, HALFWAY, BOARD'S END; AT THE BRIDGE OVER THE STRAIGHTEDGE`,
  ];
}
