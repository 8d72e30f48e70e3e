import fc from "fast-check";
import { expect, test } from "vitest";
import { offsetPath } from "../../../src/geometry/offset/offset-path.ts";
import { areaOf, lengthOf } from "../random/area.ts";
import { contains } from "../random/contains.ts";
import { distanceTo } from "../random/distance.ts";
import { offsetCase } from "../random/outline.ts";
import { pathsOf } from "../random/pathed.ts";
import { runs, seed } from "../random/runs.ts";

test("mitred corners take in what rounded ones do, no farther than the limit, and nothing nearer than the distance", () => {
  let sharper = 0;
  fc.assert(
    fc.property(offsetCase, fc.constantFrom(1.2, 2, 5), ({ path, by }, mitreLimit) => {
      const round = pathsOf(offsetPath(path, by), path);
      const mitred = pathsOf(offsetPath(path, by, { corners: "mitre", mitreLimit }), path);
      const [less, more] = by > 0 ? [round, mitred] : [mitred, round];
      expect(areaOf(less)).toBeLessThan(areaOf(more) + 1e-6 * (1 + lengthOf(more)));
      if (areaOf(less) < areaOf(more) - 1e-3) sharper++;
      for (const { points } of mitred) {
        for (const { x, y } of points) {
          const far = distanceTo([path], x, y);
          expect(far).toBeGreaterThan(Math.abs(by) - 1e-6);
          expect(far).toBeLessThan(mitreLimit * Math.abs(by) + 1e-6);
        }
      }
      for (const { points } of less)
        for (const { x, y } of points)
          expect(distanceTo(more, x, y) < 1e-6 || contains(more, x, y)).toBe(true);
    }),
    { seed, numRuns: runs },
  );
  expect(sharper / runs).toBeGreaterThanOrEqual(0.1);
});
