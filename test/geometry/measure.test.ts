import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { measurePath } from "../../src/files/dxf/measure-dxf.ts";
import { circle } from "../../src/geometry/circle.ts";
import { extentsOf, pathLength, signedArea } from "../../src/geometry/measure.ts";

const vertex = fc.record({
  x: fc.integer({ min: -5000, max: 5000 }).map((n) => n / 100),
  y: fc.integer({ min: -5000, max: 5000 }).map((n) => n / 100),
  bulge: fc.oneof(
    fc.constant(0),
    fc.integer({ min: -1000, max: 1000 }).map((n) => n / 1000),
  ),
});

describe("measures of a path", () => {
  it("are exact for a circle and a half one", () => {
    const whole = circle({ x: 3, y: -4 }, 10);
    expect(pathLength(whole)).toBeCloseTo(20 * Math.PI, 10);
    expect(signedArea(whole)).toBeCloseTo(100 * Math.PI, 9);
    const extents = extentsOf([whole])!;
    for (const [k, v] of Object.entries({ minX: -7, minY: -14, maxX: 13, maxY: 6 })) {
      expect(extents[k as keyof typeof extents]).toBeCloseTo(v, 9);
    }
    expect(extentsOf([])).toBeUndefined();
  });

  it("agree with those that files are read back by, worked out in another way", () => {
    let arcs = 0;
    fc.assert(
      fc.property(
        fc.uniqueArray(vertex, { minLength: 3, maxLength: 12, selector: ({ x }) => x }),
        (points) => {
          const vertices = points.map((p) => ({ ...p, bulge: Math.abs(p.bulge) < 1e-4 ? 0 : p.bulge }));
          const path = { closed: true, points: vertices };
          const other = measurePath({ layer: "PART", closed: true, vertices });
          arcs += other.arcs.left + other.arcs.right;
          expect(other.length).toBeCloseTo(pathLength(path), 6);
          expect(other.area).toBeCloseTo(signedArea(path), 5);
          const { minX, minY, maxX, maxY } = extentsOf([path])!;
          for (const [i, value] of [minX, minY, maxX, maxY].entries())
            expect(other.extents[i]).toBeCloseTo(value, 6);
        },
      ),
      { seed: 8, numRuns: 1000 },
    );
    expect(arcs).toBeGreaterThan(2000);
  });
});
