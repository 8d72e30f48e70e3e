import { step } from "../../step/step.ts";
import { lettering, textLength } from "../sheet/lettering.ts";
import { type Marks, type Sheet, type SheetText, together } from "../sheet/sheet.ts";
import { stroke } from "../sheet/strokes.ts";
import { axisOver, placeOn, uprightAxis } from "./axis.ts";
import { bar, type Filling } from "./bar.ts";
import { numberText } from "./number-text.ts";
import { emptyPlot, said } from "./plot-paper.ts";
import { sample } from "./sample.ts";

/** What presses the bridge, N: `load` square to the core's front and into it, `lean` along it, positive to the tail. */
type OnBridge = { readonly load: number; readonly lean: number };

/** Strings from the highest to the lowest, and what all of them do together. */
export type BridgeLoadPlotInput = {
  readonly strings: readonly ({ readonly name: string } & OnBridge)[];
  readonly all: OnBridge;
};

const wide = 9;

/** Two bars for each string, highest first: its load on the bridge, and its lean. */
export const bridgeLoadPlot = step("plot.bridge-load", 1, ({ strings, all }: BridgeLoadPlotInput): Sheet => {
  const plot = emptyPlot();
  const { frame, titleBox } = plot;
  const [left, right] = [frame.minX + 24, frame.maxX - 6];
  const values = strings.flatMap(({ load, lean }) => [load, lean]);
  const axis = axisOver([0, ...values], frame.minY + 38, titleBox.minY - 12, 10);
  const pitch = (right - left) / strings.length;
  const { written, aside } = wordingFor(values, pitch);
  const columns = strings.map((string, i) => {
    const [x, zero] = [left + pitch * (i + 0.5), placeOn(axis, 0)];
    const bars = [one(string.load, "hatched", x - aside), one(string.lean, "open", x + aside)];
    return together([{ lines: [], texts: [nameUnder(string.name, x, axis.start)] }, ...bars]);

    function one(value: number, filling: Filling, x: number): Marks {
      const end = placeOn(axis, value);
      const words = said(written(value), x, value < 0 ? end - 1.8 - lettering.height : end + 1.5, "center");
      return { lines: bar(x, wide, zero, end, filling), texts: [words] };
    }
  });
  const zero = placeOn(axis, 0);
  const sum = `LOAD ${numberText(all.load, 1)} N, LEAN ${numberText(all.lean, 1)} N`;
  const x = frame.minX + 4;
  return {
    ...plot,
    ...together([
      uprightAxis(axis, left, "ON THE BRIDGE, N"),
      { lines: [stroke("axis", { x: left, y: zero }, { x: right, y: zero })], texts: [] },
      ...columns,
      {
        lines: [],
        texts: [said(`HIGHEST STRING FIRST.   ALL STRINGS TOGETHER: ${sum}`, x, frame.minY + 15)],
      },
      sample("hatched", "LOAD: SQUARE TO THE CORE'S FRONT, INTO IT", x, frame.minY + 9.5),
      sample(
        "open",
        "LEAN: ALONG THE CORE'S FRONT, POSITIVE TO THE TAIL, NEGATIVE TO THE HEAD",
        x,
        frame.minY + 4,
      ),
    ]),
  };
});

/** How a force may be written at its bar, the fullest first: the axis has its unit too. */
const wordings: readonly ((value: number) => string)[] = [
  (value) => `${numberText(value, 1)} N`,
  (value) => numberText(value, 1),
  (value) => numberText(value, 0),
];

/** The fullest wording that leaves room for two numbers side by side, and how far each then stands from their middle, mm. */
function wordingFor(values: readonly number[], pitch: number) {
  const fits = wordings.map((written) => {
    const longest = Math.max(...values.map((value) => textLength(said(written(value), 0, 0))));
    return { written, aside: Math.max(wide / 2 + 1.5, longest / 2 + 0.8) };
  });
  return fits.find(({ aside }) => 4 * aside <= pitch) ?? fits.at(-1)!;
}

function nameUnder(name: string, x: number, lowest: number): SheetText {
  return { ...said(name, x, lowest - 11, "center"), height: lettering.title };
}
