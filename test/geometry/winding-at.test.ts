import fc from "fast-check";
import { expect, test } from "vitest";
import { regionWithin } from "../../src/geometry/region-within.ts";
import { placeIn, windingAt } from "../../src/geometry/winding-at.ts";
import { circle, closed, hole, rectangle } from "./outlines/shapes.ts";
import { areaOf } from "./random/area.ts";
import { contains } from "./random/contains.ts";
import { outline } from "./random/outline.ts";
import { runs, seed } from "./random/runs.ts";

test("a place is inside where a ray says so, and winds as the path does", () => {
  const coordinate = fc.oneof(
    fc.integer({ min: -60, max: 60 }),
    fc.double({ min: -60, max: 60, noNaN: true }),
  );
  const seen = { inside: 0, outside: 0, on: 0 };
  fc.assert(
    fc.property(outline, coordinate, coordinate, (path, x, y) => {
      const place = placeIn(regionWithin(path), { x, y });
      seen[place]++;
      if (place === "on") return;
      expect(place === "inside").toBe(contains([path], x, y));
      expect(windingAt([path], { x, y })).toBe(place === "inside" ? Math.sign(areaOf([path])) : 0);
    }),
    { seed, numRuns: runs },
  );
  expect(seen.inside / runs).toBeGreaterThanOrEqual(0.1);
});

test("corners, edges, arcs and holes are told exactly", () => {
  const region = [{ outer: rectangle(0, 0, 20, 20), holes: [hole(10, 10, 5)] }];
  const places = [
    [0, 0, "on"],
    [20, 7, "on"],
    [15, 10, "on"],
    [13, 14, "on"],
    [10, 10, "outside"],
    [1, 1, "inside"],
    [15.001, 10, "inside"],
    [14.999, 10, "outside"],
    [-5, 0, "outside"],
    [25, 20, "outside"],
  ] as const;
  for (const [x, y, expected] of places) expect(placeIn(region, { x, y })).toBe(expected);
  // On the chords of the two halves of a circle, whichever way they run.
  for (const turn of [0, 0.3, 1, Math.PI / 2, 2, 4]) {
    const [x, y] = [5 * Math.cos(turn), 5 * Math.sin(turn)];
    for (const at of [0, 0.3, -0.7]) {
      expect(windingAt([closed([x, y, 1], [-x, -y, 1])], { x: at * x, y: at * y })).toBe(1);
      expect(windingAt([closed([x, y, -1], [-x, -y, -1])], { x: at * x, y: at * y })).toBe(-1);
    }
  }
  expect(windingAt([circle(0, 0, 9), circle(1, 0, 9)], { x: 0, y: 0 })).toBe(2);
  expect(windingAt([hole(0, 0, 9)], { x: 0, y: 0 })).toBe(-1);
});
