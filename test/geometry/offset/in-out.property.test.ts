import fc from "fast-check";
import { expect, test } from "vitest";
import { offsetPath } from "../../../src/geometry/offset/offset-path.ts";
import { offsetRegion } from "../../../src/geometry/offset/offset-region.ts";
import type { Path } from "../../../src/geometry/path.ts";
import { outlinesOf } from "../../../src/geometry/region.ts";
import { areaOf } from "../random/area.ts";
import { contains } from "../random/contains.ts";
import { distanceTo } from "../random/distance.ts";
import { spaced } from "../random/flat.ts";
import { offsetCase } from "../random/outline.ts";
import { runs, seed } from "../random/runs.ts";

/** Offset there and back; nothing where the way there leaves nothing. */
function thereAndBack(path: Path, by: number): readonly Path[] {
  const there = offsetPath(path, by);
  fc.pre(there.outcome !== "invalid");
  if (there.outcome === "collapsed") return [];
  const region = there.outcome === "ok" ? [{ outer: there.path, holes: [] }] : there.region;
  const back = offsetRegion(region, -by);
  if (back.outcome === "invalid") throw new Error(JSON.stringify(back.problems));
  return back.outcome === "collapsed" ? [] : outlinesOf(back.region);
}

/** Whether every point looked at of some paths is within others or on them. */
function allWithin(paths: readonly Path[], others: readonly Path[]): boolean {
  return paths.every(({ points }) =>
    points.every((from, i) =>
      spaced(from, points[(i + 1) % points.length]!, from.bulge, 4).every(
        ([x, y]) => distanceTo(others, x, y) < 1e-6 || contains(others, x, y),
      ),
    ),
  );
}

test("in and then out never grows", () => {
  fc.assert(
    fc.property(offsetCase, ({ path, by }) => {
      const back = thereAndBack(path, -Math.abs(by));
      expect(areaOf(back)).toBeLessThan(Math.abs(areaOf([path])) + 1e-6);
      expect(allWithin(back, [path])).toBe(true);
    }),
    { seed, numRuns: runs },
  );
});

test("out and then in never shrinks", () => {
  fc.assert(
    fc.property(offsetCase, ({ path, by }) => {
      const back = thereAndBack(path, Math.abs(by));
      expect(areaOf(back)).toBeGreaterThan(Math.abs(areaOf([path])) - 1e-6);
      expect(allWithin([path], back)).toBe(true);
    }),
    { seed, numRuns: runs },
  );
});
