import { lettering } from "../sheet/lettering.ts";
import type { Box, Marks, SheetLine, SheetText } from "../sheet/sheet.ts";
import { together } from "../sheet/sheet.ts";
import { stroke } from "../sheet/strokes.ts";

/** The long bars of a sheet under its window and to the left of it, mm on the page: to measure each way by itself. */
export function tileBars(window: Box): { x: Marks; y: Marks; lengths: readonly [x: number, y: number] } {
  const long = (room: number) => Math.floor((room + 1e-9) / 10) * 10;
  const lengths = [long(window.maxX - window.minX), long(window.maxY - window.minY)] as const;
  return {
    x: bar(lengths[0], (along, aside) => ({ x: window.minX + along, y: window.minY - 1.5 - aside }), 0),
    y: bar(lengths[1], (along, aside) => ({ x: window.minX - 1.5 - aside, y: window.minY + along }), 90),
    lengths,
  };
}

/** A bar with a tick every 10 mm, a longer one every 50, where its numbers stand. */
function bar(
  length: number,
  at: (along: number, aside: number) => { x: number; y: number },
  turn: 0 | 90,
): Marks {
  const ticks = Array.from({ length: length / 10 + 1 }, (_, i): SheetLine => {
    return stroke("dimension", at(10 * i, 0), at(10 * i, i % 5 === 0 ? 2.6 : 1.6));
  });
  const numbers = [...Array(Math.floor(length / 50) + 1).keys()]
    .map((i) => 50 * i)
    .filter((value) => length - value >= 30)
    .concat(length);
  const last = numbers.at(-1);
  const texts = numbers.map((value): SheetText => {
    const align = value === 0 ? "left" : value === last ? "right" : "center";
    const text = value === last ? `${value} MM` : String(value);
    return {
      ...at(value, turn === 0 ? 3.2 + lettering.height : 3.4),
      text,
      height: lettering.height,
      turn,
      align,
    };
  });
  return together([{ lines: [stroke("edge", at(0, 0), at(length, 0)), ...ticks], texts }]);
}
