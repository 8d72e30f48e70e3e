import { describe, expect, test } from "vitest";
import { offsetPath } from "../../../src/geometry/offset/offset-path.ts";
import { offsetRegion } from "../../../src/geometry/offset/offset-region.ts";
import type { Path } from "../../../src/geometry/path.ts";
import { outlinesOf } from "../../../src/geometry/region.ts";
import { circle, closed, hole, rectangle } from "../outlines/shapes.ts";
import { areaOf } from "../random/area.ts";
import { spread } from "../random/distance.ts";

const quarter = Math.SQRT2 - 1;

/** The outlines of an offset path, each at the distance and none nearer. */
function offset(path: Path, by: number): readonly Path[] {
  const result = offsetPath(path, by);
  if (result.outcome === "collapsed" || result.outcome === "invalid") return [];
  const found = result.outcome === "ok" ? [result.path] : outlinesOf(result.region);
  const { least, most } = spread(found, [path], 8);
  expect(least).toBeGreaterThan(Math.abs(by) - 1e-6);
  expect(most).toBeLessThan(Math.abs(by) + 1e-6);
  return found;
}

describe("an inset by exactly half the width", () => {
  test("of a square leaves nothing, and just less leaves a square", () => {
    expect(offsetPath(rectangle(0, 0, 10, 10), -5).outcome).toBe("collapsed");
    expect(areaOf(offset(rectangle(0, 0, 10, 10), -4.999))).toBeCloseTo(4e-6, 12);
  });
  test("of a long rectangle, upright or askew, leaves nothing", () => {
    expect(offsetPath(rectangle(0, 0, 40, 10), -5).outcome).toBe("collapsed");
    expect(offsetPath(closed([0, 0], [30, 40], [22, 46], [-8, 6]), -5).outcome).toBe("collapsed");
  });
  test("of a slot with round ends leaves nothing", () => {
    expect(offsetPath(closed([0, 0], [30, 0, 1], [30, 10], [0, 10, 1]), -5).outcome).toBe("collapsed");
  });
  test("of a bar with two square heads leaves the heads, pointed toward the bar", () => {
    const bar = closed(
      [0, 0],
      [20, 0],
      [20, 8],
      [40, 8],
      [40, 0],
      [60, 0],
      [60, 20],
      [40, 20],
      [40, 12],
      [20, 12],
      [20, 20],
      [0, 20],
    );
    const found = offset(bar, -2);
    expect(found.length).toBe(2);
    expect(areaOf(found)).toBeCloseTo(2 * (16 * 16 + 8 - 2 * Math.PI), 6);
  });
  test("of a plus leaves its middle only", () => {
    const plus = closed(
      [10, 0],
      [20, 0],
      [20, 10],
      [30, 10],
      [30, 20],
      [20, 20],
      [20, 30],
      [10, 30],
      [10, 20],
      [0, 20],
      [0, 10],
      [10, 10],
    );
    const [middle, more] = offset(plus, -5);
    expect(more).toBeUndefined();
    expect(areaOf([middle!])).toBeCloseTo(100 - 25 * Math.PI, 6);
  });
});

describe("tangent fillets", () => {
  const filleted = closed(
    [5, 0],
    [35, 0, quarter],
    [40, 5],
    [40, 15, quarter],
    [35, 20],
    [5, 20, quarter],
    [0, 15],
    [0, 5, quarter],
  );
  test("inset by their own radius become corners", () => {
    const [found] = offset(filleted, -5);
    expect(found!.points.length).toBe(4);
    expect(areaOf([found!])).toBeCloseTo(300, 9);
  });
  test("stay arcs on the other side, as many as before", () => {
    expect(offset(filleted, 5)[0]!.points.length).toBe(8);
    expect(offset(filleted, -4)[0]!.points.length).toBe(8);
  });
  test("hollow ones outset by their own radius become corners", () => {
    const ell = closed([0, 0], [30, 0], [30, 10], [15, 10, -quarter], [10, 15], [10, 30], [0, 30]);
    const corner = offset(ell, 5)[0]!.points.find(({ x, y }) => Math.hypot(x - 15, y - 15) < 1e-7);
    expect(corner).toBeDefined();
  });
});

describe("full circles", () => {
  test("shrink to nothing at their radius, and are circles before", () => {
    expect(offsetPath(circle(3, 4, 10), -10).outcome).toBe("collapsed");
    expect(offsetPath(circle(3, 4, 10), -12).outcome).toBe("collapsed");
    const [found] = offset(circle(3, 4, 10), -4);
    expect(found!.points.length).toBe(2);
    expect(areaOf([found!])).toBeCloseTo(36 * Math.PI, 9);
    expect(areaOf(offset(circle(3, 4, 10), 4))).toBeCloseTo(196 * Math.PI, 9);
  });
  test("in thirds and quarters give the same", () => {
    const third = Math.tan(Math.PI / 6);
    const at = (turn: number): [number, number, number] => [10 * Math.cos(turn), 10 * Math.sin(turn), third];
    const parts = closed(at(0), at((2 * Math.PI) / 3), at((4 * Math.PI) / 3));
    expect(areaOf(offset(parts, -4))).toBeCloseTo(36 * Math.PI, 9);
    expect(offsetPath(parts, -10).outcome).toBe("collapsed");
  });
});

test("an inset of an inset is the inset by both", () => {
  const path = closed([0, 0], [60, 0], [60, 30, 0.4], [40, 40, -0.5], [0, 36]);
  const [first] = offset(path, -3);
  const [second] = offset(first!, -3);
  const [whole] = offset(path, -6);
  expect(spread([second!], [whole!]).most).toBeLessThan(1e-8);
  expect(areaOf([second!])).toBeCloseTo(areaOf([whole!]), 7);
});

describe("cusps, where edges fold back on one another", () => {
  const arbelos = closed([0, 0, 1], [30, 0, -1], [20, 0, -1]);
  test("of an arbelos are gone round", () => {
    const flipped = closed([30, 0, 1], [0, 0, -1], [10, 0, -1]);
    for (const shape of [arbelos, flipped]) {
      for (const by of [1, 4, 5, 7]) expect(offset(shape, by).length).toBeGreaterThan(0);
      for (const by of [-0.5, -2]) expect(offset(shape, by).length).toBeGreaterThan(0);
    }
  });
});

describe("regions", () => {
  test("nested: a hole touching its outline parts nothing and closes nothing", () => {
    const region = [{ outer: circle(0, 0, 20), holes: [hole(10, 0, 10)] }];
    const grown = offsetRegion(region, 2);
    expect(grown.outcome).toBe("ok");
    const shrunk = offsetRegion(region, -2);
    expect(shrunk.outcome === "split" || shrunk.outcome === "ok").toBe(true);
    if (shrunk.outcome === "split" || shrunk.outcome === "ok") {
      expect(shrunk.region.length).toBe(1);
      expect(shrunk.region[0]!.holes.length).toBe(0);
      expect(spread(outlinesOf(shrunk.region), outlinesOf(region)).least).toBeGreaterThan(2 - 1e-6);
    }
  });
  test("a hole closes at exactly its radius", () => {
    const region = [{ outer: rectangle(-20, -20, 40, 40), holes: [hole(0, 0, 5)] }];
    const closedUp = offsetRegion(region, 5);
    expect(closedUp).toMatchObject({ outcome: "split", region: [{ holes: [] }] });
    expect(offsetRegion(region, 4.5)).toMatchObject({
      outcome: "ok",
      region: [{ holes: [{ closed: true }] }],
    });
  });
  test("two pieces that come to touch exactly stay two, and join when they overlap", () => {
    const region = [
      { outer: circle(0, 0, 5), holes: [] },
      { outer: circle(20, 0, 5), holes: [] },
    ];
    const touching = offsetRegion(region, 5);
    expect(touching).toMatchObject({ outcome: "ok" });
    const joined = offsetRegion(region, 5.1);
    expect(joined.outcome).toBe("split");
    if (joined.outcome === "split") expect(joined.region.length).toBe(1);
  });
  test("two squares that come to share a side become one", () => {
    const region = [
      { outer: rectangle(0, 0, 10, 10), holes: [] },
      { outer: rectangle(14, 0, 10, 10), holes: [] },
    ];
    const joined = offsetRegion(region, 2, { corners: "mitre" });
    expect(joined.outcome).toBe("split");
    if (joined.outcome === "split") {
      expect(joined.region.length).toBe(1);
      expect(areaOf(outlinesOf(joined.region))).toBeCloseTo(28 * 14, 9);
    }
  });
  test("a frame inset by half of its width leaves what is in its corners, outset keeps its hole", () => {
    const frame = [{ outer: rectangle(0, 0, 30, 30), holes: [closed([4, 4], [4, 26], [26, 26], [26, 4])] }];
    const corners = offsetRegion(frame, -2);
    expect(corners.outcome).toBe("split");
    if (corners.outcome === "split") {
      expect(corners.region.length).toBe(4);
      expect(areaOf(outlinesOf(corners.region))).toBeCloseTo(4 * (4 - Math.PI), 9);
    }
    const grown = offsetRegion(frame, 3);
    expect(grown).toMatchObject({ outcome: "ok" });
    if (grown.outcome === "ok")
      expect(areaOf(outlinesOf(grown.region))).toBeCloseTo(900 + 360 + 9 * Math.PI - 256, 6);
  });
  test("the empty region collapses", () => expect(offsetRegion([], 3).outcome).toBe("collapsed"));
});

describe("mitred corners", () => {
  test("of a square make a square", () => {
    const result = offsetPath(rectangle(0, 0, 10, 10), 2, { corners: "mitre" });
    expect(result.outcome).toBe("ok");
    if (result.outcome === "ok") {
      expect(areaOf([result.path])).toBeCloseTo(196, 9);
      expect(result.path.points.length).toBe(4);
    }
  });
  test("between two arcs have both of their lines", () => {
    const lens = closed([-10, 0, 0.3], [10, 0, 0.3]);
    const result = offsetPath(lens, 2, { corners: "mitre", mitreLimit: 5 });
    expect(result.outcome === "ok" && result.path.points.length).toBe(6);
  });
  test("beside an arc whose centre is nearer than the distance", () => {
    const scooped = closed(
      [2.5, 0],
      [17.5, 0, -quarter],
      [20, 2.5],
      [20, 7.5, -quarter],
      [17.5, 10],
      [2.5, 10, -quarter],
      [0, 7.5],
      [0, 2.5, -quarter],
    );
    const result = offsetPath(scooped, 2.75, { corners: "mitre" });
    expect(result.outcome).toBe("ok");
    if (result.outcome === "ok") expect(areaOf([result.path])).toBeGreaterThan(areaOf(offset(scooped, 2.75)));
    if (result.outcome === "ok") expect(spread([result.path], [scooped]).least).toBeGreaterThan(2.75 - 1e-6);
  });
  test("sharper than the limit are rounded", () => {
    const wedge = closed([0, 0], [40, -5], [40, 5]);
    const result = offsetPath(wedge, 2, { corners: "mitre" });
    expect(result.outcome === "ok" && result.path.points.some(({ bulge }) => bulge > 0)).toBe(true);
    const far = offsetPath(wedge, 2, { corners: "mitre", mitreLimit: 20 });
    expect(far.outcome === "ok" && far.path.points.every(({ bulge }) => bulge === 0)).toBe(true);
  });
});
