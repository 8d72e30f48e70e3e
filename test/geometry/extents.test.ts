import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { entered } from "../../src/geometry/extents/entered.ts";
import { grown } from "../../src/geometry/extents/grown.ts";
import { overlap } from "../../src/geometry/extents/overlap.ts";

const box = { minX: 10, minY: 20, maxX: 30, maxY: 25 };

test("a margin goes all round, and off again", () => {
  expect(grown(box, 2)).toEqual({ minX: 8, minY: 18, maxX: 32, maxY: 27 });
  expect(grown(grown(box, 2), -2)).toEqual(box);
});

test("rectangles overlap when they share an area, whichever is asked first", () => {
  const beside = { minX: 30, minY: 20, maxX: 40, maxY: 25 };
  const over = { ...beside, minX: 29.999 };
  expect([overlap(box, beside), overlap(beside, box)]).toEqual([false, false]);
  expect([overlap(box, over), overlap(over, box)]).toEqual([true, true]);
});

describe("a line enters a rectangle", () => {
  test.each([
    ["from outside to inside", [0, 22, 20, 22], true],
    ["right through, slanting", [5, 15, 35, 30], true],
    ["wholly inside", [12, 21, 14, 24], true],
    ["along a side", [0, 20, 40, 20], true],
    ["past a corner", [5, 20, 15, 10], false],
    ["touching a corner", [5, 25, 15, 15], true],
    ["past it, level", [0, 19.999, 40, 19.999], false],
    ["past it, upright", [30.001, 0, 30.001, 40], false],
    ["toward it, too short", [0, 22, 9.999, 22], false],
    ["no length, inside", [15, 22, 15, 22], true],
  ] as const)("%s", (_, [x1, y1, x2, y2], expected) => {
    expect(entered(box, x1, y1, x2, y2)).toBe(expected);
    expect(entered(box, x2, y2, x1, y1)).toBe(expected);
  });

  test("when one of many places on it lies inside, on random lines", () => {
    const place = fc.integer({ min: 0, max: 45_000 }).map((thousandths) => thousandths / 1000);
    const [counted, looks] = [{ in: 0, out: 0 }, 400];
    fc.assert(
      fc.property(place, place, place, place, (x1, y1, x2, y2) => {
        const found = entered(box, x1, y1, x2, y2);
        counted[found ? "in" : "out"]++;
        const within = (by: number) =>
          Array.from({ length: looks + 1 }, (_, i) => i / looks).some((t) => {
            const [x, y] = [x1 + t * (x2 - x1), y1 + t * (y2 - y1)];
            const { minX, minY, maxX, maxY } = grown(box, by);
            return x >= minX && x <= maxX && y >= minY && y <= maxY;
          });
        // Places stand at most 0.16 apart, so a line that enters has one no further out than that.
        if (within(0)) expect(found).toBe(true);
        if (found) expect(within(0.16)).toBe(true);
      }),
      { seed: 17, numRuns: 500 },
    );
    const all = counted.in + counted.out;
    expect(Math.min(counted.in, counted.out) / all).toBeGreaterThan(0.1);
  });
});
