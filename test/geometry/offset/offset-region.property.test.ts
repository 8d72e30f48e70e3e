import fc from "fast-check";
import { expect, test } from "vitest";
import { offsetRegion } from "../../../src/geometry/offset/offset-region.ts";
import { outlinesOf } from "../../../src/geometry/region.ts";
import { offsetArea } from "../engine/polygon.ts";
import { areaOf, lengthOf } from "../random/area.ts";
import { spread } from "../random/distance.ts";
import { crossesFinely } from "../random/outline.ts";
import { region } from "../random/region.ts";
import { runs, seed } from "../random/runs.ts";

test("an offset of a random region lies at the distance, with the area that an engine finds, holes and all", () => {
  const distances = fc.oneof(
    fc.integer({ min: -24, max: 24 }).map((n) => n / 4),
    fc.double({ min: -7, max: 7, noNaN: true }),
  );
  const seen = { ok: 0, split: 0, collapsed: 0, holes: 0, all: 0 };
  fc.assert(
    fc.property(region, distances, (source, by) => {
      const result = offsetRegion(source, by);
      const outlines = outlinesOf(source);
      if (result.outcome === "invalid") {
        expect(outlines.some(crossesFinely)).toBe(true);
        return fc.pre(false);
      }
      seen.all++;
      seen[result.outcome]++;
      const found = result.outcome === "collapsed" ? [] : outlinesOf(result.region);
      if (result.outcome !== "collapsed" && result.region.some(({ holes }) => holes.length > 0)) seen.holes++;
      const perimeter = Math.max(lengthOf(outlines), lengthOf(found));
      for (const chord of [0.05, 0.01]) {
        const theirs = offsetArea(outlines, by, chord);
        expect(Math.abs(areaOf(found) - theirs)).toBeLessThan(chord * perimeter + 1e-6);
      }
      if (found.length === 0) return;
      const { least, most } = spread(found, outlines, 2);
      expect(least).toBeGreaterThan(Math.abs(by) - 1e-6);
      expect(most).toBeLessThan(Math.abs(by) + 1e-6);
    }),
    { seed, numRuns: runs },
  );
  for (const kind of ["ok", "split", "holes"] as const)
    expect(seen[kind] / seen.all, kind).toBeGreaterThanOrEqual(0.1);
});
