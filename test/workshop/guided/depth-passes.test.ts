import { expect, it } from "vitest";
import { depthPasses, passDepth } from "../../../src/workshop/guided/depth-passes.ts";

it("takes the chart's depth for the next smaller diameter, less in proportion under 6, and never over half the diameter", () => {
  expect([6, 10, 12.7, 19, 25].map(passDepth)).toEqual([1.6, 3.2, 4.8, 6.4, 9.5]);
  expect([6.35, 8, 12.68, 19.05, 40].map(passDepth)).toEqual([1.6, 1.6, 3.2, 6.4, 9.5]);
  expect(passDepth(3)).toBeCloseTo(0.8, 9);
  for (let d = 0.5; d < 50; d += 0.5) expect(passDepth(d)).toBeLessThanOrEqual(d / 2);
});

it("goes down in equal steps, as few as a pass allows, to the whole depth", () => {
  expect(depthPasses(3.2, 6.35)).toEqual([1.6, 3.2]);
  expect(depthPasses(3.3, 6.35)).toHaveLength(3);
  expect(depthPasses(0.5, 6.35)).toEqual([0.5]);
  for (let depth = 0.1; depth < 30; depth += 0.37)
    for (const diameter of [3, 6.35, 8, 12.68]) {
      const set = depthPasses(depth, diameter);
      expect(set.at(-1)).toBeCloseTo(depth, 9);
      const steps = set.map((one, i) => one - (set[i - 1] ?? 0));
      for (const step of steps) expect(step).toBeCloseTo(steps[0]!, 9);
      expect(steps[0]).toBeLessThanOrEqual(passDepth(diameter) + 1e-9);
      expect(depth / (set.length - 1)).toBeGreaterThan(passDepth(diameter) - 1e-9);
    }
});
