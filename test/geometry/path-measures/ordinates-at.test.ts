import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { circle } from "../../../src/geometry/circle.ts";
import { mirrored } from "../../../src/geometry/mirror.ts";
import { ordinatesAt } from "../../../src/geometry/path-measures/ordinates-at.ts";
import { whereabouts } from "../../../src/geometry/path-measures/winding.ts";
import { rectangle } from "../../../src/geometry/rectangle.ts";
import { segmentsOf } from "../../../src/geometry/segment.ts";
import { runs, seed } from "../random/runs.ts";
import { rings } from "./random-ring.ts";

const at = (path: Parameters<typeof segmentsOf>[0], x: number) => ordinatesAt(segmentsOf(path), x);

describe("where a path meets an upright line", () => {
  test("a circle: twice, once where it is touched, not beyond", () => {
    const round = circle({ x: 10, y: 3 }, 5);
    expect(at(round, 10)).toEqual([expect.closeTo(-2, 9), expect.closeTo(8, 9)]);
    expect(at(round, 13)).toEqual([expect.closeTo(-1, 9), expect.closeTo(7, 9)]);
    expect(at(round, 15)).toEqual([expect.closeTo(3, 6)]);
    expect(at(round, 15.001)).toEqual([]);
  });

  test("a side that lies along it counts by its ends", () => {
    const box = rectangle(0, 0, 4, 2);
    expect(at(box, 4)).toEqual([0, 2]);
    expect(at(box, 1)).toEqual([0, 2]);
    expect(at(box, -1)).toEqual([]);
  });

  test("of a random ring: just outside and just inside of the outermost ones, and the same mirrored", () => {
    let [met, arcs] = [0, 0];
    fc.assert(
      fc.property(rings, fc.double({ min: -1, max: 1, noNaN: true }), (path, share) => {
        const middle = path.points.reduce((sum, { x }) => sum + x, 0) / path.points.length;
        const x = middle + 60 * share;
        const found = at(path, x);
        if (path.points.some(({ bulge }) => bulge !== 0)) arcs++;
        if (found.length < 2) return;
        met++;
        const [low, high] = [found[0]!, found.at(-1)!];
        for (const [y, where] of [
          [low - 1e-4, "outside"],
          [high + 1e-4, "outside"],
        ] as const)
          expect(whereabouts(path, { x, y })).toBe(where);
        for (const y of found) expect(nearestDistance(path, x, y)).toBeLessThan(1e-5);
        const turned = at(mirrored(path, "y"), x).toReversed();
        expect(turned).toEqual(found.map((y) => expect.closeTo(0 - y, 7)));
      }),
      { numRuns: runs, seed },
    );
    expect(met).toBeGreaterThan(runs / 2);
    expect(arcs).toBeGreaterThan(runs / 2);
  });
});

/** How far a place is from a path, by a thousand places on each of its segments' circles and lines. */
function nearestDistance(path: Parameters<typeof segmentsOf>[0], x: number, y: number): number {
  let least = Number.POSITIVE_INFINITY;
  for (const segment of segmentsOf(path)) {
    // What is all but straight has a centre too far away to measure from.
    if (segment.kind === "line" || segment.radius > 1e9) {
      const [dx, dy] = [segment.to.x - segment.from.x, segment.to.y - segment.from.y];
      const share = Math.min(
        1,
        Math.max(0, ((x - segment.from.x) * dx + (y - segment.from.y) * dy) / (dx * dx + dy * dy)),
      );
      least = Math.min(least, Math.hypot(segment.from.x + share * dx - x, segment.from.y + share * dy - y));
    } else {
      const { centre, radius, start, sweep } = segment;
      const turned = (Math.atan2(y - centre.y, x - centre.x) - start) * Math.sign(sweep);
      const round = turned - 2 * Math.PI * Math.floor(turned / (2 * Math.PI));
      if (round <= Math.abs(sweep))
        least = Math.min(least, Math.abs(Math.hypot(x - centre.x, y - centre.y) - radius));
    }
    for (const end of [segment.from, segment.to]) least = Math.min(least, Math.hypot(end.x - x, end.y - y));
  }
  return least;
}
