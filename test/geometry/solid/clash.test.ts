import { beforeAll, expect, test } from "vitest";
import { type Kernel, loadKernel } from "../../../src/geometry/kernel.ts";
import { clash } from "../../../src/geometry/solid/clash.ts";
import { upright } from "../../../src/geometry/solid/frame.ts";
import type { Solid } from "../../../src/geometry/solid/solid.ts";
import { circle, moved, raised, rectangle } from "./recipes.ts";

let kernel: Kernel;
beforeAll(async () => {
  kernel = await loadKernel();
});

const box = raised(rectangle(30, 20), 10);

function clashOf(a: Solid, b: Solid) {
  const found = clash(kernel, a, b);
  if (found.kind !== "ok") throw new Error(JSON.stringify(found));
  expect(kernel.alive()).toBe(0);
  return found;
}

test("boxes apart have their gap, whichever is asked first, near or far", () => {
  for (const gap of [0.05, 3, 250]) {
    for (const [a, b] of [
      [box, moved(box, 30 + gap, 5, 0)],
      [moved(box, 30 + gap, 5, 0), box],
    ] as const) {
      const found = clashOf(a, b);
      expect(found.gap).toBeCloseTo(gap, 4);
      expect([found.interference, found.contact]).toEqual([0, 0]);
    }
  }
  expect(clashOf(box, moved(box, 33, 24, 0)).gap).toBeCloseTo(5, 4);
});

test("boxes face to face have a contact area and neither gap nor interference", () => {
  const found = clashOf(box, moved(box, 30, 5, 2));
  expect(found.gap).toBe(0);
  expect(found.contact).toBeCloseTo(15 * 8, 6);
  expect(found.interference).toBeLessThan(1e-3);
});

test("boxes in each other have their common volume, and no contact", () => {
  const found = clashOf(box, moved(box, 25, 5, 2));
  expect(found.interference).toBeCloseTo(5 * 15 * 8, 3);
  expect(found.gap).toBe(0);
  expect(found.contact).toBe(0);
});

test("faces within a thousandth of each other touch, a hundredth apart they don't", () => {
  expect(clashOf(box, moved(box, 30.0005, 0, 0)).contact).toBeCloseTo(200, 3);
  expect(clashOf(box, moved(box, 30.01, 0, 0)).contact).toBe(0);
});

test("a pin in a hole of its own size touches all round", () => {
  const plate = raised(rectangle(40, 40), 10, [circle(6, 20, 20)]);
  const found = clashOf(plate, raised(circle(6, 20, 20), 10));
  expect(found.gap).toBe(0);
  expect(Math.abs(found.contact / (2 * Math.PI * 60) - 1)).toBeLessThan(1e-3);
  expect(found.interference).toBeLessThan(1e-3);
});

test("parts placed at a slant that share a joint face touch over all of it", () => {
  const angle = 0.21;
  const frame = {
    origin: { x: 10, y: -4, z: 3 },
    u: { x: Math.cos(angle), y: Math.sin(angle), z: 0 },
    v: { x: -Math.sin(angle), y: Math.cos(angle), z: 0 },
    w: upright.w,
  };
  const place = (solid: Solid): Solid => ({ kind: "place", solid, frame });
  const found = clashOf(place(box), place(moved(box, 0, 20, 0)));
  expect(found.contact).toBeCloseTo(300, 1);
  expect(found.interference).toBeLessThan(0.01);
});

test("a fault says whose it is, and nothing left is empty", () => {
  expect(clash(kernel, box, raised(rectangle(1, 1), 0))).toEqual({
    kind: "invalid",
    problem: "no-height",
    at: "extrude",
    of: "second",
  });
  expect(clash(kernel, { kind: "cut", from: box, by: [box] }, box)).toEqual({ kind: "empty" });
  expect(clash(kernel, box, box, 0)).toMatchObject({ problem: "chord" });
});
