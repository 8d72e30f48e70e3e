import { expect, test } from "vitest";
import { offsetPath } from "../../../src/geometry/offset/offset-path.ts";
import { offsetRegion } from "../../../src/geometry/offset/offset-region.ts";
import type { Path } from "../../../src/geometry/path.ts";
import { outlinesOf } from "../../../src/geometry/region.ts";
import { offsetArea } from "../engine/polygon.ts";
import { body } from "../outlines/outlines.ts";
import { closed } from "../outlines/shapes.ts";
import { areaOf, lengthOf } from "../random/area.ts";
import { spread } from "../random/distance.ts";

/** Cases on which an offset once went wrong. */
test("a level edge seen from its own height: a step outset by more than its side is long", () => {
  const step = closed([0, -10], [10, -10], [10, 0], [40, 0], [40, 30], [0, 30]);
  const result = offsetPath(step, 10.25);
  expect(result.outcome).toBe("ok");
  if (result.outcome === "ok") expect(spread([result.path], [step]).least).toBeGreaterThan(10.25 - 1e-6);
});

test("half circles moved by a rounding stay half circles, and can be offset again", () => {
  const path = closed(
    [4.231712082615699, 6.789154059958007, 1],
    [-6.994772929156657, 3.8824157002486483],
    [-7.958954587135161, -0.8093465758994564],
    [-6.070064981542329, -5.210979861777776],
    [-7.268923435502918, -28.07423644711992, 0.17],
    [1.81713333005492, -11.861619891937337, -1],
    [22.16061291259646, -15.424241807559396, 1],
    [8, -1.959434878635765e-15],
  );
  const once = offsetPath(path, 0.000015137290487897531);
  expect(once.outcome).toBe("ok");
  if (once.outcome !== "ok") return;
  expect(once.path.points.every(({ bulge }) => Math.abs(bulge) <= 1)).toBe(true);
  expect(offsetPath(once.path, 0.000015137290487897531).outcome).toBe("ok");
});

test("thousands of short lines inset far beyond their curvature, at once and in steps", () => {
  const lines = (path: Path): Path => ({ ...path, points: path.points.map((p) => ({ ...p, bulge: 0 })) });
  const fine = lines(body(1_000));
  for (const by of [-40, -80]) {
    const result = offsetPath(fine, by);
    expect(result.outcome).toBe("ok");
    if (result.outcome !== "ok") continue;
    const slack = 0.002 * lengthOf([fine]);
    expect(Math.abs(areaOf([result.path]) - offsetArea([fine], by, 0.002))).toBeLessThan(slack);
  }
  let region = [{ outer: lines(body(10_000)), holes: [] as Path[] }] as Parameters<typeof offsetRegion>[0];
  for (let k = 0; k < 4; k++) {
    const step = offsetRegion(region, -5);
    expect(step.outcome).toBe("ok");
    if (step.outcome === "ok") region = step.region;
  }
  const theirs = offsetArea([lines(body(10_000))], -20, 0.002);
  expect(Math.abs(areaOf(outlinesOf(region)) - theirs)).toBeLessThan(0.002 * lengthOf(outlinesOf(region)));
});
