import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { fitCircle } from "../../src/geometry/fit-circle.ts";

const coordinate = fc.double({ min: -100, max: 100, noNaN: true });
const point = fc.record({ x: coordinate, y: coordinate });

/** The sum of squared distances from a circle, with its best radius for that centre. */
function error(points: readonly { x: number; y: number }[], x: number, y: number): number {
  const far = points.map((p) => Math.hypot(p.x - x, p.y - y));
  const radius = far.reduce((sum, d) => sum + d, 0) / far.length;
  return far.reduce((sum, d) => sum + (d - radius) ** 2, 0);
}

describe("a fitted circle", () => {
  it("is the circle that the points were taken from", () => {
    const arc = fc.record({
      centre: point,
      radius: fc.double({ min: 5, max: 200, noNaN: true }),
      n: fc.integer({ min: 3, max: 12 }),
    });
    fc.assert(
      fc.property(arc, ({ centre, radius, n }) => {
        const points = Array.from({ length: n }, (_, i) => {
          const angle = 0.6 + (1.8 * i) / (n - 1);
          return { x: centre.x + radius * Math.cos(angle), y: centre.y + radius * Math.sin(angle) };
        });
        const fit = fitCircle(points);
        expect(fit.kind).toBe("ok");
        if (fit.kind !== "ok") return;
        expect(Math.hypot(fit.centre.x - centre.x, fit.centre.y - centre.y)).toBeLessThan(1e-7);
        expect(Math.abs(fit.radius - radius)).toBeLessThan(1e-7);
      }),
      { seed: 1, numRuns: 300 },
    );
  });

  it("has the least error: no centre near it does better", () => {
    const wobble = fc.array(fc.double({ min: -0.5, max: 0.5, noNaN: true }), { minLength: 4, maxLength: 9 });
    fc.assert(
      fc.property(wobble, (offs) => {
        const points = offs.map((off, i) => {
          const angle = 1 + (1.2 * i) / (offs.length - 1);
          return { x: (40 + off) * Math.cos(angle), y: (40 + off) * Math.sin(angle) };
        });
        const fit = fitCircle(points);
        if (fit.kind !== "ok") throw new Error(fit.kind);
        const least = error(points, fit.centre.x, fit.centre.y);
        for (const [dx, dy] of [
          [0.01, 0],
          [-0.01, 0],
          [0, 0.01],
          [0, -0.01],
          [0.007, 0.007],
        ] as const) {
          expect(error(points, fit.centre.x + dx, fit.centre.y + dy)).toBeGreaterThanOrEqual(least - 1e-12);
        }
      }),
      { seed: 2, numRuns: 300 },
    );
  });

  it("names what is no circle", () => {
    expect(fitCircle([]).kind).toBe("too-few");
    expect(
      fitCircle([
        { x: 0, y: 0 },
        { x: 1, y: 0 },
      ]).kind,
    ).toBe("too-few");
    expect(fitCircle([0, 1, 2, 3].map((x) => ({ x, y: 2 * x }))).kind).toBe("collinear");
    expect(fitCircle([0, 0, 0].map((x) => ({ x, y: x }))).kind).toBe("collinear");
  });
});
