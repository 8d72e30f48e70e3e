import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type OpenOffset, offsetOpen } from "../../../src/geometry/offset/offset-open.ts";
import type { Path } from "../../../src/geometry/path.ts";
import { circle, open } from "../outlines/shapes.ts";
import { lengthOf } from "../random/area.ts";
import { distanceTo, spread } from "../random/distance.ts";
import { offsetCase } from "../random/outline.ts";
import { runs, seed } from "../random/runs.ts";

function pathsOf(result: OpenOffset): readonly Path[] {
  if (result.outcome === "invalid") throw new Error(JSON.stringify(result.problems));
  if (result.outcome === "collapsed") return [];
  return result.outcome === "ok" ? [result.path] : result.paths;
}

/** Places square off the middles of a path's segments, to the left, that are farther than that from all the others. */
function leftPlaces({ points }: Path, by: number): [number, number][] {
  const found: [number, number][] = [];
  points.slice(0, -1).forEach((from, i) => {
    const to = points[i + 1]!;
    const chord = Math.hypot(to.x - from.x, to.y - from.y);
    const half = 2 * Math.atan(from.bulge);
    const [ex, ey] = [(to.x - from.x) / chord, (to.y - from.y) / chord];
    // The middle of the segment: aside from its chord by the rise, and the way runs along the chord there.
    const rise = (chord / 2) * Math.tan(half / 2);
    const [mx, my] = [(from.x + to.x) / 2 + ey * rise, (from.y + to.y) / 2 - ex * rise];
    const place: [number, number] = [mx - ey * by, my + ex * by];
    const others = [points.slice(0, i + 1), points.slice(i + 1)].map((part) => ({
      closed: false,
      points: part,
    }));
    const clear = distanceTo(others, ...place) > Math.abs(by) + 1e-6;
    const ownCentre = from.bulge !== 0 && Math.abs(by) > (chord / 2) * Math.abs(Math.sin(half)) ** -1 - 1e-6;
    if (clear && !(ownCentre && by * from.bulge > 0)) found.push(place);
  });
  return found;
}

describe("an offset of a random open path", () => {
  test("lies at the distance and no nearer, and misses nothing", () => {
    const seen = { split: 0, collapsed: 0, arcs: 0, all: 0 };
    fc.assert(
      fc.property(offsetCase, ({ path: { points }, by }) => {
        fc.pre(Math.abs(by) > 1e-6);
        const path = { closed: false, points: [...points.slice(0, -1), { ...points.at(-1)!, bulge: 0 }] };
        const result = offsetOpen(path, by);
        const found = pathsOf(result);
        seen.all++;
        if (result.outcome === "split") seen.split++;
        if (path.points.some(({ bulge }) => bulge !== 0)) seen.arcs++;
        if (result.outcome === "collapsed") seen.collapsed++;
        for (const [x, y] of leftPlaces(path, by)) expect(distanceTo(found, x, y)).toBeLessThan(1e-6);
        if (found.length === 0) return;
        const { least, most } = spread(found, [path]);
        expect(least).toBeGreaterThan(Math.abs(by) - 1e-6);
        expect(most).toBeLessThan(Math.abs(by) + 1e-6);
      }),
      { seed, numRuns: runs },
    );
    for (const kind of ["split", "arcs"] as const)
      expect(seen[kind] / seen.all, kind).toBeGreaterThanOrEqual(0.1);
  });
});

describe("an open path", () => {
  const hook = open([0, 0], [20, 0, 1], [20, 10], [5, 10]);
  test("is led along on either side, the same way", () => {
    const left = pathsOf(offsetOpen(hook, 2));
    expect(left.length).toBe(1);
    expect(left[0]!.points[0]).toMatchObject({ x: 0, y: 2 });
    expect(lengthOf(left)).toBeCloseTo(35 + 3 * Math.PI, 2);
    const right = pathsOf(offsetOpen(hook, -2));
    expect(right[0]!.points[0]).toMatchObject({ x: 0, y: -2 });
    expect(lengthOf(right)).toBeCloseTo(35 + 7 * Math.PI, 2);
  });
  test("whose two legs are exactly twice the distance apart has nothing between them but their ends", () => {
    const inside = pathsOf(offsetOpen(open([0, 0], [20, 0, 1], [20, 10], [0, 10]), 5));
    expect(lengthOf(inside)).toBeLessThan(1e-6);
  });
  test("is named invalid where it is bad", () => {
    expect(offsetOpen(circle(0, 0, 3), 1)).toMatchObject({
      outcome: "invalid",
      problems: [{ code: "closed" }],
    });
    expect(offsetOpen(open([1, 1], [1, 1]), 1)).toMatchObject({ outcome: "invalid" });
    expect(offsetOpen(open([0, 0], [Number.NaN, 1]), 1)).toMatchObject({ outcome: "invalid" });
    expect(offsetOpen(open([0, 0]), 1)).toMatchObject({ outcome: "invalid" });
    expect(offsetOpen(hook, Number.POSITIVE_INFINITY)).toMatchObject({ outcome: "invalid" });
  });
});
