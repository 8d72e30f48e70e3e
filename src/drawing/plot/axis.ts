import { baseFromMiddle, lettering, textLength } from "../sheet/lettering.ts";
import type { Marks, SheetText } from "../sheet/sheet.ts";
import { stroke } from "../sheet/strokes.ts";
import { numberText } from "./number-text.ts";
import { type Ticks, ticksOver, ticksWithin } from "./ticks.ts";

/** A range of values laid out on paper: `from` lies at `start` and `to` at `end`, mm; even between. */
export type Axis = {
  readonly from: number;
  readonly to: number;
  readonly ticks: Ticks;
  readonly start: number;
  readonly end: number;
};

/** How far a tick stands out, what is kept to its number, and from numbers to the caption; mm on paper. */
const tick = { long: 1.5, clear: 1.2, caption: 2.4 } as const;

/** An axis from tick to tick, round all the values (at least one), in at most `count` steps. */
export function axisOver(values: readonly number[], start: number, end: number, count: number): Axis {
  const ticks = ticksOver(Math.min(...values), Math.max(...values), count);
  return { from: ticks.values[0]!, to: ticks.values.at(-1)!, ticks, start, end };
}

/** An axis from the least to the most of values that are not all one, with the ticks that lie between them. */
export function axisThrough(values: readonly number[], start: number, end: number, count: number): Axis {
  const [from, to] = [Math.min(...values), Math.max(...values)];
  return { from, to, ticks: ticksWithin(from, to, count), start, end };
}

/** Where a value lies on paper, mm. */
export function placeOn({ from, to, start, end }: Axis, value: number): number {
  return start + ((end - start) * (value - from)) / (to - from);
}

/** An axis that runs upward at `x` (mm on paper), its numbers and its caption left of it. */
export function uprightAxis(axis: Axis, x: number, caption: string): Marks {
  const { height } = lettering;
  const { values, decimals } = axis.ticks;
  const edge = x - tick.long - tick.clear;
  const texts = values.map((value): SheetText => {
    const y = placeOn(axis, value) + baseFromMiddle(height);
    return { text: numberText(value, decimals), x: edge, y, height, turn: 0, align: "right" };
  });
  const widest = Math.max(...texts.map(textLength));
  const said: SheetText = {
    ...{ text: caption, x: edge - widest - tick.caption, y: (axis.start + axis.end) / 2 },
    ...{ height, turn: 90, align: "center" },
  };
  return {
    lines: [
      stroke("axis", { x, y: axis.start }, { x, y: axis.end }),
      ...values.map((value) => {
        const y = placeOn(axis, value);
        return stroke("axis", { x: x - tick.long, y }, { x, y });
      }),
    ],
    texts: caption === "" ? texts : [...texts, said],
  };
}

/** An axis that runs to the right at `y` (mm on paper), its numbers and its caption under it. */
export function levelAxis(axis: Axis, y: number, caption: string): Marks {
  const { height } = lettering;
  const { values, decimals } = axis.ticks;
  const base = y - tick.long - tick.clear - height;
  const texts = values.map((value): SheetText => {
    const x = placeOn(axis, value);
    return { text: numberText(value, decimals), x, y: base, height, turn: 0, align: "center" };
  });
  const said: SheetText = {
    ...{ text: caption, x: (axis.start + axis.end) / 2, y: base - height - tick.caption },
    ...{ height, turn: 0, align: "center" },
  };
  return {
    lines: [
      stroke("axis", { x: axis.start, y }, { x: axis.end, y }),
      ...values.map((value) => {
        const x = placeOn(axis, value);
        return stroke("axis", { x, y: y - tick.long }, { x, y });
      }),
    ],
    texts: caption === "" ? texts : [...texts, said],
  };
}
