import { describe, expect, test } from "vitest";
import type { Combination } from "../../../src/geometry/boolean/combine.ts";
import { difference } from "../../../src/geometry/boolean/difference.ts";
import { intersection } from "../../../src/geometry/boolean/intersection.ts";
import { union } from "../../../src/geometry/boolean/union.ts";
import { outlinesOf, type Region } from "../../../src/geometry/region.ts";
import { regionWithin } from "../../../src/geometry/region-within.ts";
import { circle, closed, hole, open, rectangle } from "../outlines/shapes.ts";
import { areaOf } from "../random/area.ts";

const area = (result: Combination) => (result.outcome === "ok" ? areaOf(outlinesOf(result.region)) : 0);
const pieces = (result: Combination) => (result.outcome === "ok" ? result.region.length : 0);
const square = regionWithin(rectangle(0, 0, 10, 10));

describe("regions that meet exactly", () => {
  test("squares side by side become one, corner to corner stay two", () => {
    const beside = union(square, regionWithin(rectangle(10, 0, 10, 10)));
    expect([pieces(beside), area(beside)]).toEqual([1, 200]);
    expect(intersection(square, regionWithin(rectangle(10, 0, 10, 10))).outcome).toBe("empty");
    const corner = union(square, regionWithin(rectangle(10, 10, 10, 10)));
    expect([pieces(corner), area(corner)]).toEqual([2, 200]);
  });
  test("circles that touch stay two, from within they leave a crescent", () => {
    expect(pieces(union(regionWithin(circle(0, 0, 5)), regionWithin(circle(10, 0, 5))))).toBe(2);
    const crescent = difference(regionWithin(circle(0, 0, 10)), regionWithin(circle(5, 0, 5)));
    expect(area(crescent)).toBeCloseTo(75 * Math.PI, 9);
  });
  test("a plug fills its hole exactly, and what is cut out is put back", () => {
    const plate: Region = [{ outer: rectangle(0, 0, 30, 30), holes: [hole(15, 15, 6)] }];
    const plug = regionWithin(circle(15, 15, 6));
    expect(area(union(plate, plug))).toBeCloseTo(900, 9);
    expect(intersection(plate, plug).outcome).toBe("empty");
    expect(area(difference(plate, plug))).toBeCloseTo(900 - 36 * Math.PI, 9);
    const quarters = regionWithin(closed([21, 15, Math.SQRT2 - 1], [15, 21, Math.SQRT2 - 1], [9, 15, 1]));
    expect(area(union(plate, quarters))).toBeCloseTo(900, 9);
  });
  test("an island in a hole is a piece of its own", () => {
    const ring = difference(regionWithin(circle(0, 0, 20)), regionWithin(circle(0, 0, 12)));
    expect(ring).toMatchObject({ outcome: "ok", region: [{ holes: [{}] }] });
    const target = ring.outcome === "ok" ? union(ring.region, regionWithin(circle(0, 0, 5))) : ring;
    expect([pieces(target), area(target)]).toEqual([2, expect.closeTo((400 - 144 + 25) * Math.PI, 9)]);
  });
  test("nothing with something", () => {
    expect(union([], []).outcome).toBe("empty");
    expect(area(union([], square))).toBe(100);
    expect(difference([], square).outcome).toBe("empty");
    expect(area(difference(square, []))).toBe(100);
    expect(intersection(square, []).outcome).toBe("empty");
  });
  test("a bad region is named, and which", () => {
    expect(union(square, regionWithin(closed([0, 0], [9, 9], [9, 0], [0, 8])))).toMatchObject({
      outcome: "invalid",
      operand: 1,
    });
    expect(difference([{ outer: open([0, 0], [1, 0], [1, 1]), holes: [] }], square)).toMatchObject({
      outcome: "invalid",
      operand: 0,
      problems: [{ code: "open" }],
    });
  });
});

describe("found by random cases", () => {
  test("the middle of a straight edge on the chord of an arc, both cut at the same two points", () => {
    const a = regionWithin(closed([0, 0], [10, 0], [10, -10], [20, -10], [20, 10], [0, 10]));
    const b = regionWithin(closed([-24, -18], [4, -12, -0.5], [30, -24], [30, -2], [4, -9], [-24, -2]));
    const both = area(intersection(a, b));
    expect(area(difference(a, b)) + both).toBeCloseTo(300, 9);
    expect(area(difference(b, a)) + both).toBeCloseTo(areaOf(outlinesOf(b)), 9);
    expect(area(union(a, b)) + both).toBeCloseTo(300 + areaOf(outlinesOf(b)), 9);
  });
});
