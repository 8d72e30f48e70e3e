import fc from "fast-check";
import { expect, test } from "vitest";
import { facet } from "../../src/geometry/facet.ts";
import { closed, open } from "./outlines/shapes.ts";
import { areaOf } from "./random/area.ts";
import { distanceTo, spread } from "./random/distance.ts";
import { outline } from "./random/outline.ts";
import { runs, seed } from "./random/runs.ts";

test("chords stray no farther than asked, through the path's own points, and no more of them than it takes", () => {
  fc.assert(
    fc.property(outline, fc.constantFrom(1, 0.1, 0.01), (path, chord) => {
      const found = facet(path, chord);
      expect(found.points.every(({ bulge }) => bulge === 0)).toBe(true);
      for (const { x, y } of path.points) expect(found.points.some((p) => p.x === x && p.y === y)).toBe(true);
      for (const { x, y } of found.points) expect(distanceTo([path], x, y)).toBeLessThan(1e-9);
      const { most } = spread([found], [path], 2);
      expect(most).toBeLessThan(chord + 1e-9);
      const coarser = facet(path, 4.5 * chord).points.length;
      expect(coarser).toBeLessThanOrEqual(found.points.length);
    }),
    { seed, numRuns: runs },
  );
});

test("a half circle of radius 10 within 0.1 takes so many chords as its sagitta says", () => {
  // 10 (1 - cos(a / 2)) <= 0.1: a <= 0.2831, and π / 0.2831 is 11.1.
  expect(facet(closed([10, 0, 1], [-10, 0]), 0.1).points.length).toBe(13);
});

test("an open path keeps its end, lines stay, and a chord of nothing is the least that is felt", () => {
  const path = open([0, 0, 0.4], [10, 0], [20, 0]);
  expect(facet(path, 0.1).points.at(-1)).toEqual({ x: 20, y: 0, bulge: 0 });
  const lines = open([0, 0], [10, 0]);
  expect(facet(lines, 0.1)).toBe(lines);
  expect(facet(path, 0).points.length).toBe(facet(path, 1e-6).points.length);
  expect(facet(path, Number.NaN).points.length).toBe(facet(path, 1e-6).points.length);
  expect(Math.abs(areaOf([facet(closed([5, 0, 1], [-5, 0, 1]), 1e-5)]))).toBeCloseTo(25 * Math.PI, 2);
});
