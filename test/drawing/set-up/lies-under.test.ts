import { expect, it } from "vitest";
import { takenBy } from "../../../src/drawing/sheet/clear.ts";
import { liesUnder } from "../../../src/drawing/sheet/set-up/lies-under.ts";
import type { SheetLine } from "../../../src/drawing/sheet/sheet.ts";
import { stroke } from "../../../src/drawing/sheet/strokes.ts";
import { circle } from "../../../src/geometry/circle.ts";

const lines: SheetLine[] = [
  stroke("edge", { x: 0, y: 0 }, { x: 40, y: 10 }),
  { weight: "outline", path: circle({ x: 60, y: 30 }, 12) },
];
const isOver = liesUnder(lines);
const { stretches } = takenBy({ lines, texts: [] });

it("finds a line under a box by places along it, and never one that isn't there", () => {
  let [found, clear] = [0, 0];
  for (let x = -6; x < 80; x += 1.7)
    for (let y = -6; y < 50; y += 1.3) {
      const box = { minX: x, maxX: x + 7, minY: y, maxY: y + 3.5 };
      // By the chords of the lines, looked at ten times as closely.
      const real = stretches.some(({ a, b }) => {
        const count = Math.ceil(Math.hypot(b.x - a.x, b.y - a.y) / 0.05);
        return Array.from({ length: count + 1 }, (_, i) => i / count).some((t) => {
          const [px, py] = [a.x + (b.x - a.x) * t, a.y + (b.y - a.y) * t];
          return px > box.minX - 0.02 && px < box.maxX + 0.02 && py > box.minY - 0.02 && py < box.maxY + 0.02;
        });
      });
      if (isOver(box)) {
        expect(real).toBe(true);
        found++;
      } else clear++;
    }
  expect(found).toBeGreaterThan(100);
  expect(clear).toBeGreaterThan(100);
});
