import { grown } from "../../geometry/extents/grown.ts";
import { overlap } from "../../geometry/extents/overlap.ts";
import { boxOf } from "./lettering.ts";
import { moved } from "./moved.ts";
import type { Box, Marks } from "./sheet.ts";

/** How far views stay apart, and how fine their places are tried, mm on paper. */
const apart = 4;
const grid = 2;

/**
 * Views put into a frame one after the other, each as high as it goes and then as far left, clear of `kept` and of each other by
 * their boxes. `no-room` where one doesn't fit.
 */
export function shelved(
  views: readonly Marks[],
  frame: Box,
  kept: readonly Box[],
): { readonly kind: "ok"; readonly views: readonly Marks[] } | { readonly kind: "no-room" } {
  const taken = [...kept];
  const put: Marks[] = [];
  for (const view of views) {
    const box = boxOf(view);
    const spot = firstFree(box, frame, taken);
    if (spot === undefined) return { kind: "no-room" };
    const there = moved(view, spot.x - box.minX, spot.y - box.maxY);
    put.push(there);
    taken.push(boxOf(there));
  }
  return { kind: "ok", views: put };
}

/** The upper left corner at which a box of that size is first free. */
function firstFree(box: Box, frame: Box, taken: readonly Box[]): { x: number; y: number } | undefined {
  const [wide, high] = [box.maxX - box.minX, box.maxY - box.minY];
  for (let y = frame.maxY - apart; y - high >= frame.minY + apart; y -= grid) {
    for (let x = frame.minX + apart; x + wide <= frame.maxX - apart; x += grid) {
      const here = grown({ minX: x, maxX: x + wide, minY: y - high, maxY: y }, apart / 2);
      if (!taken.some((other) => overlap(here, other))) return { x, y };
    }
  }
  return undefined;
}
