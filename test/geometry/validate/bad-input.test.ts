import { describe, expect, test } from "vitest";
import { cutterAccess } from "../../../src/geometry/access/cutter-access.ts";
import { union } from "../../../src/geometry/boolean/union.ts";
import { offsetPath } from "../../../src/geometry/offset/offset-path.ts";
import { offsetRegion } from "../../../src/geometry/offset/offset-region.ts";
import type { Path } from "../../../src/geometry/path.ts";
import { outlinesOf } from "../../../src/geometry/region.ts";
import { regionWithin } from "../../../src/geometry/region-within.ts";
import { validateOutline } from "../../../src/geometry/validate/validate-outline.ts";
import { validateRegion } from "../../../src/geometry/validate/validate-region.ts";
import { body } from "../outlines/outlines.ts";
import { circle, closed, hole, open, rectangle } from "../outlines/shapes.ts";
import { areaOf } from "../random/area.ts";
import { moved } from "../random/moved.ts";

const codes = (path: Path) => validateOutline(path).map(({ code }) => code);

describe("a bad outline is named", () => {
  test.each<[string, Path, string[]]>([
    ["open", open([0, 0], [9, 0], [9, 9]), ["open"]],
    ["empty", closed(), ["too-few-points"]],
    ["one point", closed([3, 3]), ["too-few-points", "repeated-point"]],
    [
      "all one place",
      closed([3, 3], [3, 3], [3, 3]),
      ["repeated-point", "repeated-point", "repeated-point", "zero-length"],
    ],
    ["not a number", closed([0, 0], [Number.NaN, 0], [9, 9]), ["not-finite"]],
    [
      "an infinite bulge",
      closed([0, 0, Number.POSITIVE_INFINITY], [9, 0], [9, 9]),
      ["not-finite", "bulge-over-half"],
    ],
    ["too far out", closed([0, 0], [2e6, 0], [9, 9]), ["out-of-range"]],
    ["more than half a circle", closed([0, 0, 1.001], [9, 0], [9, 9]), ["bulge-over-half"]],
    ["all on one line", closed([0, 0], [5, 0], [9, 0]), ["no-area"]],
    ["all on one slanting line", closed([0, 0], [1, 3], [3, 9]), ["no-area"]],
    ["a bow tie", closed([0, 0], [10, 10], [10, 0], [0, 10.5]), ["self-crossing"]],
    ["an even bow tie", closed([0, 0], [10, 10], [10, 0], [0, 10]), ["no-area"]],
    ["twice round", closed([5, 0, 1], [-5, 0, 1], [5, 0, 1], [-5, 0, 1]), ["self-crossing"]],
    ["arcs that cross", closed([0, 0, 0.9], [10, 0], [10, 2, 0.9], [0, 2]), []],
    ["arcs that do cross", closed([0, 0, -0.9], [10, 0], [10, 2, -0.9], [0, 2]), ["self-crossing"]],
  ])("%s", (_, path, expected) => {
    expect(codes(path)).toEqual(expected);
    const blocking = expected.filter((code) => code !== "repeated-point");
    const result = offsetPath(path, 1);
    if (blocking.length === 0) expect(result.outcome).not.toBe("invalid");
    else expect(result).toMatchObject({ outcome: "invalid", problems: blocking.map((code) => ({ code })) });
  });
  test("with its place", () => {
    expect(validateOutline(closed([0, 0], [9, 0], [9, 9, 2]))).toEqual([
      { code: "bulge-over-half", path: 0, index: 2 },
    ]);
  });
  test("a distance that is no number", () => {
    expect(offsetPath(circle(0, 0, 5), Number.NaN).outcome).toBe("invalid");
    expect(offsetRegion(regionWithin(circle(0, 0, 5)), Number.NEGATIVE_INFINITY).outcome).toBe("invalid");
  });
});

describe("what is merely unusual is worked on", () => {
  test("repeated points and slivers of segments", () => {
    const path = closed([0, 0], [0, 0], [10, 0], [10, 1e-9], [10, 10], [10, 10], [0, 10], [0, 1e-10]);
    const result = offsetPath(path, -1);
    expect(result.outcome === "ok" && areaOf([result.path])).toBeCloseTo(64, 6);
  });
  test("an outline that touches itself", () => {
    const pinched = closed([0, 0], [20, 0], [20, 10], [10, 0.0], [0, 10]);
    expect(codes(pinched)).toEqual([]);
    expect(offsetPath(pinched, 1).outcome).toBe("ok");
  });
  test("a spike of no width", () => {
    const spiked = closed([0, 0], [10, 0], [10, 5], [30, 5], [10, 5], [10, 10], [0, 10]);
    expect(codes(spiked)).toEqual([]);
    const shrunk = offsetPath(spiked, -1);
    expect(shrunk.outcome === "ok" && areaOf([shrunk.path])).toBeCloseTo(64, 6);
  });
  test("a million millimetres out", () => {
    const far = moved(closed([0, 0], [40, 0, 0.5], [40, 30], [0, 30, -0.3]), 999_900, -999_900);
    const here = offsetPath(moved(far, -999_900, 999_900), -3);
    const there = offsetPath(far, -3);
    expect(there.outcome).toBe("ok");
    if (there.outcome !== "ok" || here.outcome !== "ok") return;
    const back = moved(there.path, -999_900, 999_900);
    back.points.forEach(({ x, y }, i) => {
      expect(Math.hypot(x - here.path.points[i]!.x, y - here.path.points[i]!.y)).toBeLessThan(1e-6);
    });
  });
  test("two million millimetres across", () => {
    const result = offsetPath(rectangle(-1e6, -1e6, 2e6, 2e6), -10);
    expect(result.outcome === "ok" && areaOf([result.path])).toBeCloseTo(1_999_980 ** 2, -1);
  });
  test("ten thousand segments", () => {
    const many = body(10_000);
    const result = offsetPath(many, 6);
    expect(result.outcome === "ok" && result.path.points.length).toBeLessThan(10_100);
    expect(offsetPath(many, -300).outcome).toBe("collapsed");
    expect(union(regionWithin(many), regionWithin(moved(many, 7, 3))).outcome).toBe("ok");
    expect(cutterAccess(regionWithin(many), 5, "inside").outcome).not.toBe("invalid");
  });
  test("ten thousand segments that fold over one another are named, not waited for", () => {
    const points = Array.from({ length: 10_000 }, (_, k) => [k % 2 === 0 ? 0 : 100, k / 100] as const);
    expect(codes(closed(...points, [50, -5], [0, -5]))).toContain("self-crossing");
  });
});

describe("a bad region is named", () => {
  const outer = rectangle(0, 0, 30, 30);
  test.each<[string, Parameters<typeof validateRegion>[0], string[]]>([
    ["good", [{ outer, holes: [hole(10, 10, 5)] }], []],
    ["empty", [], []],
    ["outer clockwise", [{ outer: hole(0, 0, 5), holes: [] }], ["wrong-winding"]],
    ["hole counter-clockwise", [{ outer, holes: [circle(10, 10, 5)] }], ["wrong-winding"]],
    ["hole across the outline", [{ outer, holes: [hole(0, 10, 5)] }], ["overlapping"]],
    ["hole outside", [{ outer, holes: [hole(50, 10, 5)] }], ["overlapping"]],
    ["holes across one another", [{ outer, holes: [hole(10, 10, 5), hole(14, 10, 5)] }], ["overlapping"]],
    [
      "pieces on one another",
      [
        { outer, holes: [] },
        { outer: circle(5, 5, 2), holes: [] },
      ],
      ["overlapping"],
    ],
    ["touching", [{ outer, holes: [hole(5, 10, 5), hole(15, 10, 5)] }], []],
    ["an open hole", [{ outer, holes: [open([1, 1], [2, 2], [3, 1])] }], ["open"]],
    ["a hole of one line", [{ outer, holes: [closed([1, 1], [2, 2])] }], ["no-area"]],
  ])("%s", (_, region, expected) => {
    expect(validateRegion(region).map(({ code }) => code)).toEqual(expected);
    expect(offsetRegion(region, 0.5).outcome === "invalid").toBe(expected.length > 0);
  });
  test("a hole is never lost without a word", () => {
    const holes = Array.from({ length: 12 }, (_, k) => hole(6 + 8 * (k % 4), 6 + 8 * Math.floor(k / 4), 2));
    const result = offsetRegion([{ outer: rectangle(0, 0, 40, 30), holes }], -1);
    expect(result).toMatchObject({ outcome: "ok" });
    if (result.outcome === "ok") expect(outlinesOf(result.region).length).toBe(13);
  });
});
