import type { Point } from "../../geometry/point.ts";
import { rectangleOf } from "../../geometry/rectangle.ts";
import { lettering, textBox } from "../sheet/lettering.ts";
import type { Box, Marks, SheetText } from "../sheet/sheet.ts";

const side = 100;
const words = `${side} BY ${side} MM`;

/** How far from what is drawn a side of the square counts as free, mm. */
const beside = 2;

/** From one place that is tried to the next, mm. */
const pitch = 8;

/**
 * A square of 100 mm to measure, on the page, where it comes across least of what is drawn in the window; `drawn` are places along the
 * drawing's lines and words, on the page. Its words stand inside it, and are left out where they would stand on something.
 */
export function tileSquare(window: Box, drawn: readonly Point[]): Marks {
  const near = drawn.filter(
    ({ x, y }) => x > window.minX && x < window.maxX && y > window.minY && y < window.maxY,
  );
  const room = { x: window.maxX - window.minX - side - 6, y: window.maxY - window.minY - side - 6 };
  const steps = (length: number) =>
    Array.from({ length: Math.floor(length / pitch) + 1 }, (_, i) => i * pitch);
  let best = { cost: Number.POSITIVE_INFINITY, x: 0, y: 0 };
  for (const dx of steps(room.x).concat(room.x)) {
    for (const dy of steps(room.y).concat(room.y)) {
      const [x, y] = [window.minX + 3 + dx, window.minY + 3 + dy];
      const cost = costAt(x, y, near);
      if (cost < best.cost) best = { cost, x, y };
    }
  }
  const { x, y } = best;
  const box = { minX: x, minY: y, maxX: x + side, maxY: y + side };
  const text = placesFor(x, y).find((at) => isFree(at, near));
  return {
    lines: [{ weight: "dimension", path: rectangleOf(box) }],
    texts: text === undefined ? [] : [text],
  };
}

/** What lies on the square's sides counts a hundredfold, what lies inside it once. */
function costAt(left: number, low: number, near: readonly Point[]): number {
  let cost = 0;
  for (const { x, y } of near) {
    const inward = Math.min(x - left, left + side - x, y - low, low + side - y);
    if (inward < -beside) continue;
    cost += inward <= beside ? 100 : 1;
  }
  return cost;
}

function placesFor(x: number, y: number): SheetText[] {
  const at = (dx: number, dy: number): SheetText => {
    return { text: words, x: x + dx, y: y + dy, height: lettering.height, turn: 0, align: "left" };
  };
  const rows = [3, side - 3 - lettering.height, 20, 35, 50, 65, 80];
  return rows.flatMap((dy) => [3, 35, 65].map((dx) => at(dx, dy)));
}

function isFree(text: SheetText, near: readonly Point[]): boolean {
  const { minX, minY, maxX, maxY } = textBox(text);
  return !near.some(({ x, y }) => x > minX - 1.5 && x < maxX + 1.5 && y > minY - 1.5 && y < maxY + 1.5);
}
