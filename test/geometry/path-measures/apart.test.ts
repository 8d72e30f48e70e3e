import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { circle } from "../../../src/geometry/circle.ts";
import { extentsApart, extentsOf } from "../../../src/geometry/measure.ts";
import { mirrored } from "../../../src/geometry/mirror.ts";
import { depthIn, depthsIn } from "../../../src/geometry/path-measures/depth-in.ts";
import { leastOver, pathsApart } from "../../../src/geometry/path-measures/paths-apart.ts";
import { rectangle } from "../../../src/geometry/rectangle.ts";

const place = fc.record({
  x: fc.double({ min: -60, max: 60, noNaN: true }),
  y: fc.double({ min: -60, max: 60, noNaN: true }),
});
const radius = fc.double({ min: 1, max: 20, noNaN: true });

describe("how deep a place lies in a path", () => {
  it("is the way to it, positive inside and negative outside, for circle and box and either winding", () => {
    fc.assert(
      fc.property(place, place, radius, (at, centre, r) => {
        const round = circle(centre, r);
        const expected = r - Math.hypot(at.x - centre.x, at.y - centre.y);
        expect(depthIn(round, at)).toBeCloseTo(expected, 6);
        const turned = mirrored(mirrored(round, "x"), "x");
        expect(depthIn({ ...turned, points: turned.points.toReversed() }, at)).toBeCloseTo(
          -Math.abs(expected) * (expected < 0 ? 1 : -1),
          6,
        );
        const box = rectangle(-10, -20, 10, 20);
        const [out, up] = [Math.abs(at.x) - 10, Math.abs(at.y) - 20];
        const away = out > 0 || up > 0 ? -Math.hypot(Math.max(0, out), Math.max(0, up)) : -Math.max(out, up);
        expect(depthsIn(box)(at)).toBeCloseTo(away, 6);
      }),
      { seed: 7, numRuns: 200 },
    );
  });

  it("is taken to the edge that is named alone", () => {
    const box = rectangle(0, 0, 100, 20);
    const right = {
      closed: false,
      points: [
        { x: 100, y: 0, bulge: 0 },
        { x: 100, y: 20, bulge: 0 },
      ],
    };
    expect(depthIn(box, { x: 30, y: 1 }, right)).toBeCloseTo(70, 9);
    expect(depthIn(box, { x: 130, y: 1 }, right)).toBeCloseTo(-30, 9);
  });
});

describe("how far two paths are apart", () => {
  it("is what two circles' centres and radii say, the same both ways, and how far one lies in the other", () => {
    fc.assert(
      fc.property(place, radius, place, radius, (a, r, b, s) => {
        const [one, two] = [circle(a, r), circle(b, s)];
        const between = Math.hypot(a.x - b.x, a.y - b.y);
        const expected = between - r - s;
        // Of two that lie deep in each other the deepest place is asked, which is no farther than the smaller reaches.
        const found = pathsApart(one, two);
        expect(pathsApart(two, one)).toBeCloseTo(found, 9);
        if (expected > 0) expect(Math.abs(found - expected)).toBeLessThan(1e-3);
        else expect(found).toBeLessThan(0.001);
      }),
      { seed: 11, numRuns: 150 },
    );
  });

  it("is found between two steps, and where only a corner comes near", () => {
    const box = rectangle(0, 0, 50, 10);
    const tip = {
      closed: true,
      points: [
        { x: 17.3, y: 12, bulge: 0 },
        { x: 20, y: 30, bulge: 0 },
        { x: 15, y: 30, bulge: 0 },
      ],
    };
    expect(pathsApart(box, tip)).toBeCloseTo(2, 6);
    expect(leastOver(box, ({ x, y }) => Math.hypot(x - 17.3, y - 12))).toBeCloseTo(2, 3);
  });

  it("is that of the boxes where these are as far apart as asked", () => {
    const [a, b] = [rectangle(0, 0, 10, 10), rectangle(40, 50, 60, 60)];
    expect(extentsApart(extentsOf([a])!, extentsOf([b])!)).toBeCloseTo(50, 9);
    expect(pathsApart(a, b, 50)).toBeCloseTo(50, 9);
    expect(pathsApart(a, circle({ x: 31, y: 31 }, 1), 20)).toBeCloseTo(Math.hypot(20, 20), 9);
  });
});
