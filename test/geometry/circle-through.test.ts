import fc from "fast-check";
import { expect, it } from "vitest";
import { circleThrough } from "../../src/geometry/circle-through.ts";

const place = fc.record({
  x: fc.integer({ min: -10000, max: 10000 }).map((n) => n / 100),
  y: fc.integer({ min: -10000, max: 10000 }).map((n) => n / 100),
});

it("passes through all three places, or says that they lie on one line", () => {
  const seen = { ok: 0, collinear: 0 };
  const three = fc.oneof(
    { weight: 3, arbitrary: fc.tuple(place, place, place) },
    fc.tuple(place, place).map(([a, b]) => [a, b, { x: 2 * b.x - a.x, y: 2 * b.y - a.y }] as const),
  );
  fc.assert(
    fc.property(three, ([a, b, c]) => {
      const circle = circleThrough(a, b, c);
      seen[circle.kind]++;
      const area = Math.abs((b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x));
      if (circle.kind === "collinear") expect(area).toBeLessThan(0.01);
      else {
        for (const { x, y } of [a, b, c]) {
          const off = Math.hypot(x - circle.centre.x, y - circle.centre.y) - circle.radius;
          expect(Math.abs(off)).toBeLessThan(1e-9 * Math.max(1, circle.radius));
        }
      }
    }),
    { seed: 5, numRuns: 1000 },
  );
  expect(seen.ok).toBeGreaterThan(500);
  expect(seen.collinear).toBeGreaterThan(100);
});
