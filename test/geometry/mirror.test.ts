import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { extentsOf, pathLength, signedArea } from "../../src/geometry/measure.ts";
import { mirrored } from "../../src/geometry/mirror.ts";

const vertex = fc.record({
  x: fc.double({ min: -50, max: 50, noNaN: true }),
  y: fc.double({ min: -50, max: 50, noNaN: true }),
  bulge: fc.double({ min: -1, max: 1, noNaN: true }),
});
const path = fc
  .record({ closed: fc.boolean(), points: fc.array(vertex, { minLength: 2, maxLength: 9 }) })
  .map((p) => ({
    ...p,
    points: p.points.map((q, i) => (!p.closed && i === p.points.length - 1 ? { ...q, bulge: 0 } : q)),
  }));

describe("a mirrored path", () => {
  it("keeps length and signed area, and has the mirrored extents", () => {
    fc.assert(
      fc.property(path, fc.constantFrom("x" as const, "y" as const), (original, axis) => {
        const other = mirrored(original, axis);
        expect(pathLength(other)).toBeCloseTo(pathLength(original), 6);
        if (original.closed) expect(signedArea(other)).toBeCloseTo(signedArea(original), 5);
        const [a, b] = [extentsOf([original])!, extentsOf([other])!];
        const [low, high] = axis === "x" ? [a.minX, a.maxX] : [a.minY, a.maxY];
        const [otherLow, otherHigh] = axis === "x" ? [b.minX, b.maxX] : [b.minY, b.maxY];
        expect(otherLow).toBeCloseTo(-high, 6);
        expect(otherHigh).toBeCloseTo(-low, 6);
      }),
      { seed: 4, numRuns: 500 },
    );
  });

  it("mirrored again is the path itself", () => {
    fc.assert(
      fc.property(path, fc.constantFrom("x" as const, "y" as const), (original, axis) => {
        const twice = mirrored(mirrored(original, axis), axis);
        expect(twice.points.map(({ x, y, bulge }) => [x + 0, y + 0, bulge + 0])).toEqual(
          original.points.map(({ x, y, bulge }) => [x + 0, y + 0, bulge + 0]),
        );
      }),
      { seed: 4, numRuns: 300 },
    );
  });
});
