import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { clearingRadius } from "../../../src/geometry/access/clearing-radius.ts";
import { cutterAccess } from "../../../src/geometry/access/cutter-access.ts";
import { relieveCorners } from "../../../src/geometry/access/relieve-corners.ts";
import { outlinesOf } from "../../../src/geometry/region.ts";
import { regionWithin } from "../../../src/geometry/region-within.ts";
import { onPolygons } from "../engine/polygon.ts";
import { circle, closed, hole, rectangle } from "../outlines/shapes.ts";
import { areaOf, lengthOf } from "../random/area.ts";
import { contains } from "../random/contains.ts";
import { distanceTo, spread } from "../random/distance.ts";
import { crossesFinely, outline } from "../random/outline.ts";
import { runs, seed } from "../random/runs.ts";

const quarter = Math.SQRT2 - 1;
const square = regionWithin(rectangle(0, 0, 20, 20));

describe("cutter access to random outlines", () => {
  test("leaves what an engine's opening leaves, and touches what is left of the outline", () => {
    const seen = { clear: 0, leaves: 0, shut: 0, all: 0 };
    let jumps = 0;
    const radii = fc.oneof(
      fc.integer({ min: 1, max: 24 }).map((n) => n / 2),
      fc.double({ min: 0.5, max: 12, noNaN: true }),
    );
    fc.assert(
      fc.property(outline, radii, fc.constantFrom("inside", "outside"), (path, radius, side) => {
        const access = cutterAccess(regionWithin(path), radius, side);
        if (access.outcome === "invalid") {
          expect(crossesFinely(path)).toBe(true);
          return fc.pre(false);
        }
        seen.all++;
        seen[access.outcome]++;
        const chord = 0.005;
        const by = side === "inside" ? -radius : radius;
        const around = Math.max(8, 4 * Math.ceil(Math.PI / (4 * Math.acos(1 - chord / radius))));
        const theirs = onPolygons([path], chord, (section) => {
          const there = section.offset(by, "Round", 2, around);
          const back = there.offset(-by, "Round", 2, around);
          there.delete();
          return back;
        }).area;
        const reached = access.outcome === "shut" ? [] : outlinesOf(access.reached);
        // An opening may jump in area where a place is as wide as the cutter within the chord error: then neither is wrong.
        const slack = 3 * chord * Math.max(lengthOf([path]), lengthOf(reached)) + 1e-6;
        if (Math.abs(theirs - areaOf(reached)) > slack) {
          const nearby = [-2 * chord, 2 * chord].map((more) => {
            const other = cutterAccess(regionWithin(path), radius + more, side);
            return other.outcome === "clear" || other.outcome === "leaves"
              ? areaOf(outlinesOf(other.reached))
              : 0;
          });
          jumps++;
          expect(theirs).toBeGreaterThan(Math.min(...nearby) - slack);
          expect(theirs).toBeLessThan(Math.max(...nearby) + slack);
        }
        if (access.outcome === "shut") return;
        expect(spread(access.touched, [path], 2).most).toBeLessThan(1e-6);
        if (access.outcome === "clear") return;
        const leftArea = access.left.reduce((sum, { area }) => sum + area, 0);
        const missing = Math.abs(Math.abs(areaOf([path])) - areaOf(reached));
        expect(Math.abs(missing - leftArea)).toBeLessThan(1e-4);
        for (const { place, depth } of access.left.slice(0, 3)) {
          expect(distanceTo([path], place.x, place.y)).toBeLessThan(1e-6);
          if (!Number.isFinite(depth)) continue;
          expect(distanceTo(reached, place.x, place.y)).toBeLessThan(depth + 1e-6);
          expect(contains(reached, place.x, place.y)).toBe(side === "outside");
        }
      }),
      { seed, numRuns: runs },
    );
    expect(seen.leaves / seen.all).toBeGreaterThanOrEqual(0.1);
    expect(jumps / seen.all).toBeLessThan(0.05);
  });
});

describe("a cutter", () => {
  test("leaves the corners of a square recess, as deep as (√2 - 1) of its radius", () => {
    const access = cutterAccess(square, 3, "inside");
    expect(access.outcome).toBe("leaves");
    if (access.outcome !== "leaves") return;
    expect(access.left.length).toBe(4);
    for (const { area, depth } of access.left) {
      expect(area).toBeCloseTo(9 * (1 - Math.PI / 4), 9);
      expect(depth).toBeCloseTo(3 * (Math.SQRT2 - 1), 9);
    }
    expect(lengthOf(access.touched)).toBeCloseTo(4 * 14, 9);
    expect(cutterAccess(square, 3, "outside")).toMatchObject({ outcome: "clear" });
  });
  test("clears rounded corners of its own radius exactly", () => {
    const rounded = regionWithin(
      closed(
        [3, 0],
        [17, 0, quarter],
        [20, 3],
        [20, 17, quarter],
        [17, 20],
        [3, 20, quarter],
        [0, 17],
        [0, 3, quarter],
      ),
    );
    expect(cutterAccess(rounded, 3, "inside").outcome).toBe("clear");
    expect(cutterAccess(rounded, 3.01, "inside").outcome).toBe("leaves");
    expect(clearingRadius(rounded, 8, "inside")).toEqual({ outcome: "radius", radius: 3 });
    expect(clearingRadius(rounded, 8, "outside")).toEqual({ outcome: "radius", radius: 8 });
  });
  test("is shut out of a slot narrower than itself, and the narrow place decides what clears", () => {
    expect(cutterAccess(regionWithin(rectangle(0, 0, 30, 5)), 3, "inside").outcome).toBe("shut");
    const gap = [{ outer: circle(0, 0, 30), holes: [hole(-8, 0, 5), hole(8, 0, 5)] }];
    const clearing = clearingRadius(gap, 10, "inside");
    expect(clearing.outcome).toBe("radius");
    if (clearing.outcome === "radius") expect(Math.abs(clearing.radius - 3)).toBeLessThan(1e-6);
  });
  test("gets into no sharp corner, and those are told", () => {
    const clearing = clearingRadius(square, 3, "inside");
    expect(clearing).toMatchObject({ outcome: "none" });
    if (clearing.outcome === "none")
      expect(clearing.corners.map(({ turn }) => turn)).toEqual([90, 90, 90, 90]);
  });
  test("of no radius, or a bad region, is named invalid", () => {
    expect(cutterAccess(square, 0, "inside").outcome).toBe("invalid");
    expect(cutterAccess(square, Number.NaN, "inside").outcome).toBe("invalid");
    expect(cutterAccess([], 3, "inside").outcome).toBe("invalid");
    expect(cutterAccess([{ outer: hole(0, 0, 3), holes: [] }], 1, "inside").outcome).toBe("invalid");
  });
});

describe("a relief", () => {
  test("on the bisector reaches the corner's point and lets a square in", () => {
    const relieved = relieveCorners(square, 3, "inside");
    expect(relieved.outcome).toBe("ok");
    if (relieved.outcome !== "ok") return;
    expect(relieved.reliefs.length).toBe(4);
    for (const { beyond, area } of relieved.reliefs) {
      expect(beyond).toBeCloseTo(3 * (1 - Math.SQRT1_2), 9);
      expect(area).toBeCloseTo(9 * (Math.PI / 2 - 1), 6);
    }
    const access = cutterAccess(relieved.region, 3, "inside");
    const left = access.outcome === "leaves" ? access.left : [];
    for (const { place } of left)
      expect(Math.min(place.x, place.y, 20 - place.x, 20 - place.y)).toBeLessThan(1e-6);
    expect(access.outcome === "clear" || access.outcome === "leaves").toBe(true);
    if (access.outcome === "clear" || access.outcome === "leaves")
      for (const [x, y] of [
        [0.001, 0.001],
        [19.999, 0.001],
        [0.001, 19.999],
      ] as const)
        expect(contains(outlinesOf(access.reached), x, y)).toBe(true);
  });
  test("along a side leaves the side before it whole", () => {
    const relieved = relieveCorners(square, 2, "inside", { manner: "along", at: [{ x: 20, y: 0 }] });
    expect(relieved.outcome).toBe("ok");
    if (relieved.outcome !== "ok") return;
    expect(relieved.reliefs).toMatchObject([{ beyond: 2, centre: { x: 20, y: 2 } }]);
    expect(relieved.reliefs[0]!.area).toBeCloseTo(2 * Math.PI, 6);
    for (const { x, y } of relieved.region[0]!.outer.points) expect(y > -1e-9 && x < 22 + 1e-9).toBe(true);
  });
  test("of a part's hollow corner takes from the part", () => {
    const ell = regionWithin(closed([0, 0], [30, 0], [30, 10], [10, 10], [10, 30], [0, 30]));
    const relieved = relieveCorners(ell, 3, "outside");
    expect(relieved.outcome).toBe("ok");
    if (relieved.outcome !== "ok") return;
    expect(relieved.reliefs.length).toBe(1);
    expect(areaOf(outlinesOf(relieved.region))).toBeCloseTo(500 - 9 * (Math.PI / 2 - 1), 6);
  });
  test("where there is no corner is none", () => {
    expect(relieveCorners(regionWithin(circle(0, 0, 5)), 1, "inside").outcome).toBe("none");
    expect(relieveCorners(square, 1, "outside").outcome).toBe("none");
    expect(relieveCorners(square, 0, "inside").outcome).toBe("invalid");
  });
});
