import fc from "fast-check";
import { expect, test } from "vitest";
import { axesAlong } from "../../../src/geometry/solid/axes-along.ts";
import { rod } from "../../../src/geometry/solid/rod.ts";
import { between, cross, dot, lengthOf, type Vec3 } from "../../../src/geometry/solid/vec3.ts";

const part = fc.double({ min: -50, max: 50, noNaN: true });
const place = fc.record({ x: part, y: part, z: part });

function square({ u, v, w }: ReturnType<typeof axesAlong>) {
  for (const axis of [u, v, w]) expect(lengthOf(axis)).toBeCloseTo(1, 9);
  for (const [a, b] of [
    [u, v],
    [v, w],
    [w, u],
  ] as const)
    expect(dot(a, b)).toBeCloseTo(0, 9);
  expect(lengthOf(between(cross(u, v), w))).toBeCloseTo(0, 9);
}

test("axes along a direction are square, of length 1 and right-handed, and u is square to what lies aside", () => {
  const aside = { x: 0, y: 1, z: 0 };
  square(axesAlong({ x: 3, y: 0, z: -4 }, aside));
  expect(axesAlong({ x: 3, y: 0, z: -4 }, aside).w).toEqual({ x: 0.6, y: 0, z: -0.8 });
  expect(dot(axesAlong({ x: 3, y: 2, z: -4 }, aside).u, aside)).toBe(0);
});

test("a direction along what lies aside gives no numbers", () => {
  const { u } = axesAlong({ x: 0, y: 5, z: 0 }, { x: 0, y: 1, z: 0 });
  expect(u.x).toBeNaN();
});

test("a rod runs from one place to the other, upright ones too", () => {
  const counted = { steep: 0, all: 0 };
  fc.assert(
    fc.property(place, place, fc.boolean(), (from, other, upright) => {
      const to: Vec3 = upright ? { x: from.x, y: from.y, z: from.z + 5 } : other;
      const long = lengthOf(between(from, to));
      fc.pre(long > 1);
      counted.all++;
      if (Math.abs(to.z - from.z) > 0.7 * long) counted.steep++;
      const made = rod(from, to, 3);
      if (made.kind !== "place" || made.solid.kind !== "extrude")
        throw new Error("a rod is a placed extrusion");
      const { frame, solid } = made;
      square(frame);
      const { w, origin } = frame;
      const { height } = solid;
      const end = { x: origin.x + height * w.x, y: origin.y + height * w.y, z: origin.z + height * w.z };
      expect(origin).toEqual(from);
      expect(lengthOf(between(end, to))).toBeLessThan(1e-9);
      expect(solid.outlines[0]!.outer.points.map(({ x, y }) => Math.hypot(x, y))).toEqual([1.5, 1.5]);
    }),
    { seed: 5, numRuns: 300 },
  );
  expect(counted.steep / counted.all).toBeGreaterThan(0.1);
  expect(1 - counted.steep / counted.all).toBeGreaterThan(0.1);
});
