import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { distancesTo } from "../../../src/geometry/path-measures/distances-to.ts";
import { nearestPlace } from "../../../src/geometry/path-measures/nearest-place.ts";
import { segmentsOf } from "../../../src/geometry/segment.ts";

const number = fc.double({ min: -50, max: 50, noNaN: true });
const place = fc.record({ x: number, y: number });
const path = fc
  .array(fc.record({ x: number, y: number, bulge: fc.double({ min: -1, max: 1, noNaN: true }) }), {
    minLength: 2,
    maxLength: 40,
  })
  .map((points) => ({ closed: true, points }));

describe("the distance from many places to the same lines and arcs", () => {
  it("is that of the nearest of them, though most are passed over", () => {
    let halfTurns = 0;
    let far = 0;
    fc.assert(
      fc.property(path, fc.array(place, { minLength: 1, maxLength: 12 }), (outline, places) => {
        const to = distancesTo(segmentsOf(outline));
        if (outline.points.some(({ bulge }) => Math.abs(bulge) > 0.9)) halfTurns++;
        for (const at of places) {
          const nearest = nearestPlace(outline, at);
          if (nearest.kind !== "ok") throw new Error("a path without a segment");
          if (nearest.distance > 20) far++;
          expect(to(at)).toBe(nearest.distance);
        }
      }),
      { seed: 5, numRuns: 500 },
    );
    expect(halfTurns).toBeGreaterThan(50);
    expect(far).toBeGreaterThan(50);
  });

  it("is infinite where there is none", () => {
    expect(distancesTo([])({ x: 0, y: 0 })).toBe(Number.POSITIVE_INFINITY);
  });
});
