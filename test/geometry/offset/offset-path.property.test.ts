import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { offsetPath, type PathOffset } from "../../../src/geometry/offset/offset-path.ts";
import { offsetRegion } from "../../../src/geometry/offset/offset-region.ts";
import type { Path } from "../../../src/geometry/path.ts";
import { outlinesOf } from "../../../src/geometry/region.ts";
import { offsetArea } from "../engine/polygon.ts";
import { areaOf, lengthOf } from "../random/area.ts";
import { spread } from "../random/distance.ts";
import { isHollow, offsetCase } from "../random/outline.ts";
import { pathsOf } from "../random/pathed.ts";
import { runs, seed } from "../random/runs.ts";

/** The outlines of the offset of an offset. */
function again(first: PathOffset, path: Path, by: number): readonly Path[] {
  if (first.outcome !== "split") return pathsOf(offsetPath(pathsOf(first, path)[0]!, by), path);
  const second = offsetRegion(first.region, by);
  if (second.outcome === "invalid") throw new Error(JSON.stringify(second.problems));
  return second.outcome === "collapsed" ? [] : outlinesOf(second.region);
}

const options = { seed, numRuns: runs };

describe("an offset of a random outline", () => {
  test("lies at the distance and nowhere nearer, and the hard cases are there", () => {
    const seen = { arcs: 0, split: 0, collapsed: 0, hollow: 0, all: 0 };
    fc.assert(
      fc.property(offsetCase, ({ path, by }) => {
        const result = offsetPath(path, by);
        const found = pathsOf(result, path);
        seen.all++;
        if (path.points.some(({ bulge }) => bulge !== 0)) seen.arcs++;
        if (result.outcome === "split") seen.split++;
        if (result.outcome === "collapsed") seen.collapsed++;
        if (isHollow(path)) seen.hollow++;
        if (found.length === 0) return;
        const { least, most } = spread(found, [path]);
        expect(least).toBeGreaterThan(Math.abs(by) - 1e-6);
        expect(most).toBeLessThan(Math.abs(by) + 1e-6);
      }),
      options,
    );
    for (const kind of ["arcs", "split", "collapsed", "hollow"] as const)
      expect(seen[kind] / seen.all, kind).toBeGreaterThanOrEqual(0.1);
  });

  test("has the area that a polygon engine finds, at two chord errors", () => {
    fc.assert(
      fc.property(offsetCase, ({ path, by }) => {
        const found = pathsOf(offsetPath(path, by), path);
        const area = areaOf(found);
        const perimeter = Math.max(lengthOf([path]), lengthOf(found));
        for (const chord of [0.02, 0.002]) {
          const theirs = offsetArea([path], by, chord);
          expect(Math.abs(area - theirs)).toBeLessThan(chord * perimeter + 1e-6);
        }
      }),
      options,
    );
  });

  test("is the same set when done in two halves", () => {
    fc.assert(
      fc.property(offsetCase, ({ path, by }) => {
        const whole = pathsOf(offsetPath(path, by), path);
        // A half has to be a distance at all.
        fc.pre(Math.abs(by / 2) > 1e-6);
        const half = offsetPath(path, by / 2);
        const twice = half.outcome === "collapsed" ? [] : again(half, path, by / 2);
        const perimeter = Math.max(lengthOf([path]), lengthOf(whole));
        expect(Math.abs(areaOf(twice) - areaOf(whole))).toBeLessThan(1e-6 * perimeter + 1e-6);
        if (twice.length === 0) return;
        const { least, most } = spread(twice, [path]);
        expect(least).toBeGreaterThan(Math.abs(by) - 1e-6);
        expect(most).toBeLessThan(Math.abs(by) + 1e-6);
      }),
      options,
    );
  });
});
