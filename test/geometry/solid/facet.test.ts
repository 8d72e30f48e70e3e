import fc from "fast-check";
import { expect, test } from "vitest";
import { signedArea } from "../../../src/geometry/measure.ts";
import type { Path } from "../../../src/geometry/path.ts";
import { facet, facetCounts } from "../../../src/geometry/solid/facet.ts";
import { distanceTo } from "../fair/distance.ts";
import { rings } from "../path-measures/random-ring.ts";
import { runs } from "../random/runs.ts";
import { circle } from "./recipes.ts";

function areaOf(ring: readonly { x: number; y: number }[]): number {
  return ring.reduce((sum, p, i) => sum + ring.at(i - 1)!.x * p.y - p.x * ring.at(i - 1)!.y, 0) / 2;
}

test("the chords enclose the area of the path, stray no farther than asked, and don't mind which way it runs", () => {
  fc.assert(
    fc.property(rings, fc.constantFrom(0.5, 0.1, 0.01), (path, chord) => {
      const clear = {
        ...path,
        points: path.points.map((p) => (Math.abs(p.bulge) < 1e-4 ? { ...p, bulge: 0 } : p)),
      };
      const ring = facet(clear, facetCounts(clear, chord));
      expect(Math.abs(areaOf(ring) - signedArea(clear))).toBeLessThan(1e-6);
      const distance = distanceTo(clear);
      let worst = 0;
      for (const [i, p] of ring.entries()) {
        const q = ring[(i + 1) % ring.length]!;
        for (const t of [0, 0.25, 0.5, 0.75]) {
          worst = Math.max(worst, distance({ x: p.x + t * (q.x - p.x), y: p.y + t * (q.y - p.y) }));
        }
      }
      expect(worst).toBeLessThan(chord * 1.001);
      const points = clear.points
        .map(({ x, y }, i) => ({ x, y, bulge: -clear.points.at(i - 1)!.bulge }))
        .reverse();
      const back = facet({ closed: true, points }, facetCounts({ closed: true, points }, chord)).reverse();
      const start = back.findIndex((p) => p.x === ring[0]!.x && p.y === ring[0]!.y);
      const apart = ring.map((p, i) => {
        const q = back[(start + i) % back.length]!;
        return Math.hypot(p.x - q.x, p.y - q.y);
      });
      expect(Math.max(...apart)).toBeLessThan(1e-9);
    }),
    { seed: 51, numRuns: Math.ceil(runs / 4) },
  );
});

test("an arc that is all but straight takes two chords, near its line", () => {
  for (const bulge of [1e-9, 3e-13, -2.6e-14]) {
    const path: Path = {
      closed: false,
      points: [
        { x: 0, y: 0, bulge },
        { x: 400, y: 0, bulge: 0 },
      ],
    };
    const line = facet(path, facetCounts(path, 0.01));
    expect(line.length).toBeLessThanOrEqual(3);
    for (const { y } of line) expect(Math.abs(y)).toBeLessThan(1e-6);
  }
});

test("a large circle takes as many chords as its chord error asks, and no more", () => {
  const counts = facetCounts(circle(1e6), 0.01);
  expect(counts[0]).toBe(counts[1]);
  const inscribed = Math.PI / (2 * Math.acos(1 - 0.01 / 1e6));
  expect(Math.abs(counts[0]! / inscribed - 1)).toBeLessThan(0.01);
});
