import { describe, expect, test } from "vitest";
import { offsetPath } from "../../../src/geometry/offset/offset-path.ts";
import { outlinesOf } from "../../../src/geometry/region.ts";
import { areaOf } from "../random/area.ts";
import { spread } from "../random/distance.ts";
import { outlines } from "./outlines.ts";

describe.each(Object.entries(outlines))("%s", (_, path) => {
  test("has neighbours that are tangent where both are arcs, and a good area", () => {
    expect(areaOf([path])).toBeGreaterThan(0);
  });
  test.each([0.5, 1, 1.9, 6, 15, -0.5, -1, -1.9, -6, -15, -38])(
    "offset by %f has at most twice the segments, all at the distance",
    (by) => {
      const result = offsetPath(path, by);
      expect(result.outcome).not.toBe("invalid");
      if (result.outcome === "invalid" || result.outcome === "collapsed") return;
      const found = result.outcome === "ok" ? [result.path] : outlinesOf(result.region);
      const count = found.reduce((sum, { points }) => sum + points.length, 0);
      expect(count).toBeLessThanOrEqual(2 * path.points.length);
      const { least, most } = spread(found, [path], 2);
      expect(least).toBeGreaterThan(Math.abs(by) - 1e-6);
      expect(most).toBeLessThan(Math.abs(by) + 1e-6);
    },
  );
});

test("the waisted body parts in two, the comb's slots close round holes or not at all, the spiral stays one", () => {
  expect(offsetPath(outlines["waisted body"], -38)).toMatchObject({ outcome: "split" });
  expect(offsetPath(outlines["comb of 40 teeth"], 1.9).outcome).toBe("ok");
  expect(offsetPath(outlines["comb of 40 teeth"], 2).outcome).toBe("ok");
  expect(offsetPath(outlines.spiral, -2.9).outcome).toBe("ok");
  expect(offsetPath(outlines.spiral, -3).outcome).toBe("collapsed");
});
