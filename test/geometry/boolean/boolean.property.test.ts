import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { Combination } from "../../../src/geometry/boolean/combine.ts";
import { difference } from "../../../src/geometry/boolean/difference.ts";
import { intersection } from "../../../src/geometry/boolean/intersection.ts";
import { union } from "../../../src/geometry/boolean/union.ts";
import type { Path } from "../../../src/geometry/path.ts";
import { outlinesOf, type Region } from "../../../src/geometry/region.ts";
import { regionWithin } from "../../../src/geometry/region-within.ts";
import { combinedArea } from "../engine/polygon.ts";
import { areaOf, lengthOf } from "../random/area.ts";
import { spread } from "../random/distance.ts";
import { moved } from "../random/moved.ts";
import { crossesFinely, outline } from "../random/outline.ts";
import { runs, seed } from "../random/runs.ts";

/** Outlines of a combination; one that is invalid is passed over if an operand does cross itself finely. */
function outlinesIn(result: Combination, operands: readonly Path[]): readonly Path[] {
  if (result.outcome === "invalid") {
    expect(crossesFinely(operands[result.operand]!)).toBe(true);
    fc.pre(false);
    return [];
  }
  return result.outcome === "empty" ? [] : outlinesOf(result.region);
}

/** Two outlines, the second moved over the first by whole steps as often as any: lattices then share edges. */
const pair = fc.record({
  a: outline,
  b: fc
    .record({
      path: outline,
      by: fc.oneof(
        fc
          .tuple(fc.integer({ min: -8, max: 8 }), fc.integer({ min: -8, max: 8 }))
          .map(([x, y]) => [10 * x, 10 * y]),
        fc.tuple(
          fc.double({ min: -80, max: 80, noNaN: true }),
          fc.double({ min: -80, max: 80, noNaN: true }),
        ),
      ),
    })
    .map(({ path, by }) => moved(path, by[0]!, by[1]!)),
});

const ways = [
  ["add", union],
  ["subtract", difference],
  ["intersect", intersection],
] as const satisfies readonly (readonly [string, (a: Region, b: Region) => Combination])[];

describe("combining random regions", () => {
  test("finds the area that a polygon engine finds, at two chord errors, on the edges of the two", () => {
    const seen = { arcs: 0, empty: 0, several: 0, all: 0 };
    fc.assert(
      fc.property(pair, fc.constantFrom(...ways), ({ a, b }, [how, way]) => {
        const found = outlinesIn(way(regionWithin(a), regionWithin(b)), [a, b]);
        seen.all++;
        if (found.length === 0) seen.empty++;
        if (found.length > 1) seen.several++;
        if (found.some(({ points }) => points.some(({ bulge }) => bulge !== 0))) seen.arcs++;
        const perimeter = lengthOf([a, b]);
        for (const chord of [0.02, 0.002]) {
          const theirs = combinedArea(how, [a], [b], chord);
          expect(Math.abs(areaOf(found) - theirs)).toBeLessThan(chord * perimeter + 1e-6);
        }
        expect(spread(found, [a, b]).most).toBeLessThan(1e-6);
      }),
      { seed, numRuns: runs },
    );
    for (const kind of ["arcs", "empty", "several"] as const)
      expect(seen[kind] / seen.all, kind).toBeGreaterThanOrEqual(0.1);
  });

  test("keeps the sums of areas", () => {
    fc.assert(
      fc.property(pair, ({ a, b }) => {
        const [inA, inB] = [regionWithin(a), regionWithin(b)];
        const sum = (result: Combination) => areaOf(outlinesIn(result, [a, b]));
        const [both, either] = [sum(intersection(inA, inB)), sum(union(inA, inB))];
        const slack = 1e-7 * lengthOf([a, b]);
        const [sizeA, sizeB] = [areaOf(outlinesOf(inA)), areaOf(outlinesOf(inB))];
        expect(Math.abs(either + both - sizeA - sizeB)).toBeLessThan(slack);
        expect(Math.abs(sum(difference(inA, inB)) + both - sizeA)).toBeLessThan(slack);
        expect(Math.abs(sum(difference(inB, inA)) + both - sizeB)).toBeLessThan(slack);
      }),
      { seed, numRuns: runs },
    );
  });

  test("of a region with itself is itself or nothing", () => {
    fc.assert(
      fc.property(outline, fc.nat(20), (path, start) => {
        const region = regionWithin(path);
        const turned = regionWithin({
          ...path,
          points: [...path.points.slice(start), ...path.points.slice(0, start)],
        });
        const slack = 1e-7 * lengthOf([path]);
        const same = outlinesIn(union(region, turned), [path, path]);
        expect(same.length).toBe(1);
        expect(Math.abs(areaOf(same) - areaOf(outlinesOf(region)))).toBeLessThan(slack);
        expect(intersection(region, turned).outcome).toBe("ok");
        expect(difference(region, turned).outcome).toBe("empty");
      }),
      { seed, numRuns: runs },
    );
  });
});
