import { describe, expect, test } from "vitest";
import { offsetPath } from "../../../src/geometry/offset/offset-path.ts";
import type { Path } from "../../../src/geometry/path.ts";
import { combinedArea, offsetArea } from "../engine/polygon.ts";
import { circle, closed, hole, rectangle } from "../outlines/shapes.ts";
import { areaOf, lengthOf } from "./area.ts";
import { contains } from "./contains.ts";
import { crosses } from "./crosses.ts";
import { spread } from "./distance.ts";
import { flat } from "./flat.ts";

/** What the property tests measure with must see planted faults: here they are planted. */
describe("a planted fault is seen", () => {
  const source = closed([0, 0], [40, 0, 0.4], [40, 20], [25, 22, -0.3], [0, 20]);
  const result = offsetPath(source, 3);
  const good = result.outcome === "ok" ? result.path : closed();
  const spoilt = (change: (path: Path) => Path) => spread([change(good)], [source]);
  const changed = (at: number, by: { x?: number; bulge?: number }) => (path: Path) => ({
    ...path,
    points: path.points.map((p, i) =>
      i === at ? { ...p, x: p.x + (by.x ?? 0), bulge: p.bulge + (by.bulge ?? 0) } : p,
    ),
  });

  test("none in the good one", () => {
    expect(spread([good], [source]).least).toBeGreaterThan(3 - 1e-6);
    expect(spread([good], [source]).most).toBeLessThan(3 + 1e-6);
  });
  test("a point moved by a hundredth", () => {
    good.points.forEach((_, i) => {
      const { least, most } = spoilt(changed(i, { x: 0.01 }));
      expect(least < 3 - 1e-6 || most > 3 + 1e-6).toBe(true);
    });
  });
  test("a bulge a thousandth too much, or an arc made a line", () => {
    good.points.forEach(({ bulge }, i) => {
      for (const by of bulge === 0 ? [0.001] : [0.001, -bulge]) {
        const { least, most } = spoilt(changed(i, { bulge: by }));
        expect(least < 3 - 1e-6 || most > 3 + 1e-6).toBe(true);
      }
    });
  });
  test("the wrong sign and the wrong distance, by area", () => {
    const perimeter = lengthOf([good]);
    expect(Math.abs(areaOf([good]) - offsetArea([source], 3, 0.002))).toBeLessThan(0.002 * perimeter + 1e-6);
    expect(Math.abs(areaOf([good]) - offsetArea([source], -3, 0.002))).toBeGreaterThan(
      0.002 * perimeter + 1e-6,
    );
    expect(Math.abs(areaOf([good]) - offsetArea([source], 3.01, 0.002))).toBeGreaterThan(
      0.002 * perimeter + 1e-6,
    );
  });
  test("a hole left out, or filled twice, by area", () => {
    const [outer, inner] = [rectangle(0, 0, 30, 30), hole(10, 10, 4)];
    const theirs = combinedArea("subtract", [outer], [circle(10, 10, 4)], 0.002);
    const slack = 0.002 * lengthOf([outer, inner]) + 1e-6;
    expect(Math.abs(areaOf([outer, inner]) - theirs)).toBeLessThan(slack);
    expect(Math.abs(areaOf([outer]) - theirs)).toBeGreaterThan(slack);
    expect(Math.abs(areaOf([outer, inner, inner]) - theirs)).toBeGreaterThan(slack);
  });
  test("a crossing, and a place on the wrong side", () => {
    expect(crosses(flat(closed([0, 0], [10, 10], [10, 0], [0, 10]), 0.01))).toBe(true);
    expect(crosses(flat(source, 0.01))).toBe(false);
    expect(contains([circle(0, 0, 5)], 4.99, 0)).toBe(true);
    expect(contains([circle(0, 0, 5)], 5.01, 0)).toBe(false);
    expect(contains([circle(0, 0, 5), hole(0, 0, 2)], 1, 1)).toBe(false);
  });
});
