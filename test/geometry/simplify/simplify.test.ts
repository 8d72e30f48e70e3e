import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { Path, PathPoint } from "../../../src/geometry/path.ts";
import { simplify } from "../../../src/geometry/simplify/simplify.ts";
import { circle, closed, open, rectangle } from "../outlines/shapes.ts";
import { areaOf } from "../random/area.ts";
import { spread } from "../random/distance.ts";
import { spaced } from "../random/flat.ts";
import { startedAt, turnedRound } from "../random/moved.ts";
import { outline } from "../random/outline.ts";
import { runs, seed } from "../random/runs.ts";

function pathsOf(paths: readonly Path[]): readonly Path[] {
  const result = simplify(paths);
  if (result.outcome === "invalid") throw new Error(JSON.stringify(result.problems));
  return result.outcome === "empty" ? [] : result.paths;
}

/** A path with each segment cut into so many equal parts. */
function cutUp({ closed, points }: Path, parts: number): Path {
  const cut = points.flatMap((from, i): PathPoint[] => {
    const to = points[(i + 1) % points.length]!;
    const bulge = Math.tan(Math.atan(from.bulge) / parts);
    return spaced(from, to, from.bulge, parts)
      .slice(0, -1)
      .map(([x, y]) => ({ x, y, bulge }));
  });
  return { closed, points: cut };
}

describe("a random outline", () => {
  test("cut into parts comes back whole", () => {
    fc.assert(
      fc.property(outline, fc.integer({ min: 2, max: 7 }), (path, parts) => {
        const [found, more] = pathsOf([cutUp(path, parts)]);
        expect(more).toBeUndefined();
        expect(found!.points.length).toBeLessThanOrEqual(pathsOf([path])[0]!.points.length);
        expect(areaOf([found!])).toBeCloseTo(areaOf([path]), 5);
        expect(spread([found!], [path], 3).most).toBeLessThan(3e-6);
      }),
      { seed, numRuns: runs },
    );
  });
  test("drawn as loose segments in any order and direction is joined again", () => {
    fc.assert(
      fc.property(outline, fc.infiniteStream(fc.nat(1_000)), (path, stream) => {
        const pieces = path.points.map((from, i): Path => {
          const to = path.points[(i + 1) % path.points.length]!;
          const segment = open([from.x, from.y, from.bulge], [to.x, to.y]);
          return stream.next().value! % 2 === 0 ? segment : open([to.x, to.y, -from.bulge], [from.x, from.y]);
        });
        const shuffled = pieces
          .map((piece) => ({ piece, at: stream.next().value! }))
          .sort((a, b) => a.at - b.at);
        const [found, more] = pathsOf(shuffled.map(({ piece }) => piece));
        expect(more).toBeUndefined();
        expect(found!.closed).toBe(true);
        expect(Math.abs(areaOf([found!]))).toBeCloseTo(Math.abs(areaOf([path])), 5);
      }),
      { seed, numRuns: runs },
    );
  });
  test("is simple already once it has been simplified", () => {
    fc.assert(
      fc.property(outline, fc.integer({ min: 1, max: 3 }), (path, parts) => {
        const once = pathsOf([cutUp(path, parts)]);
        expect(pathsOf(once)).toEqual(once);
      }),
      { seed, numRuns: runs },
    );
  });
});

describe("what is simplified", () => {
  test("points on a line and on a circle go, corners stay", () => {
    const path = closed(
      [0, 0],
      [3, 0],
      [5, 0],
      [10, 0, Math.tan(Math.PI / 16)],
      [10 + 5 * Math.SQRT1_2, 5 - 5 * Math.SQRT1_2, Math.tan(Math.PI / 16)],
      [15, 5],
      [15, 20],
      [0, 20],
    );
    const [found] = pathsOf([path]);
    expect(found!.points.length).toBe(5);
    expect(found!.points.map(({ bulge }) => bulge).filter((bulge) => bulge !== 0)[0]).toBeCloseTo(
      Math.SQRT2 - 1,
      9,
    );
  });
  test("a point that is off by more than the tolerance stays", () => {
    expect(pathsOf([closed([0, 0], [5, 1e-5], [10, 0], [10, 9], [0, 9])])[0]!.points.length).toBe(5);
    expect(pathsOf([closed([0, 0], [5, 1e-7], [10, 0], [10, 9], [0, 9])])[0]!.points.length).toBe(4);
  });
  test("a circle of eight arcs is two half circles", () => {
    const eighth = Math.tan(Math.PI / 16);
    const at = (k: number): [number, number, number] => [
      7 * Math.cos((k * Math.PI) / 4),
      7 * Math.sin((k * Math.PI) / 4),
      eighth,
    ];
    const [found] = pathsOf([closed(...[0, 1, 2, 3, 4, 5, 6, 7].map(at))]);
    expect(found!.points.map(({ bulge }) => bulge)).toEqual([expect.closeTo(1, 9), expect.closeTo(1, 9)]);
    expect(found!.points.every(({ bulge }) => Math.abs(bulge) <= 1)).toBe(true);
  });
  test("repeated points and segments of no length go", () => {
    expect(
      pathsOf([closed([0, 0], [0, 0], [10, 0], [10, 0, 0.5], [10, 9], [0, 9], [0, 1e-8])])[0]!.points.length,
    ).toBe(4);
    expect(pathsOf([closed([1, 1], [1, 1], [1, 1])])).toEqual([]);
  });
  test("a line there and back is not taken for one line", () => {
    const spike = open([0, 0], [10, 0], [4, 0]);
    expect(pathsOf([spike])).toEqual([spike]);
  });
  test("ends nearer than a thousandth are joined half way, farther ones are not", () => {
    const gap = (by: number) => [open([0, 0], [10, 0]), open([10 + by, 0], [10, 10])];
    expect(pathsOf(gap(0.0008))).toMatchObject([
      { closed: false, points: [{}, { x: expect.closeTo(10.0004, 9) }, {}] },
    ]);
    expect(pathsOf(gap(0.0012)).length).toBe(2);
    expect(pathsOf([open([0, 0], [10, 0], [10, 10], [0, 0.0009])])).toMatchObject([{ closed: true }]);
  });
  test("the same path drawn again goes, whichever way and from wherever", () => {
    const ring = closed([0, 0], [10, 0, 0.3], [10, 9], [0, 9]);
    expect(pathsOf([ring, ring, turnedRound(ring), startedAt(ring, 2), circle(0, 0, 2)]).length).toBe(2);
    const stroke = open([0, 0], [4, 0, 0.5], [9, 3]);
    expect(
      pathsOf([stroke, { ...turnedRound({ ...stroke, closed: true }), closed: false }]).length,
    ).toBeLessThanOrEqual(2);
    expect(pathsOf([rectangle(0, 0, 3, 4), rectangle(0, 0, 3, 5)]).length).toBe(2);
  });
  test("bad points are named, and nothing is empty", () => {
    expect(simplify([open([0, 0], [Number.NaN, 3])])).toMatchObject({
      outcome: "invalid",
      problems: [{ code: "not-finite" }],
    });
    expect(simplify([closed([0, 0, 1.2], [3, 3])]).outcome).toBe("invalid");
    expect(simplify([]).outcome).toBe("empty");
    expect(simplify([{ closed: true, points: [] }, open([1, 2])]).outcome).toBe("empty");
  });
  test("ten thousand points on one line become two", () => {
    const many: Path = {
      closed: false,
      points: Array.from({ length: 10_000 }, (_, k) => ({ x: k / 10, y: k / 20, bulge: 0 })),
    };
    expect(pathsOf([many])[0]!.points.length).toBe(2);
  });
});
