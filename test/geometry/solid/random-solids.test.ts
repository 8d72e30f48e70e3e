import fc from "fast-check";
import { beforeAll, expect, test } from "vitest";
import { type Kernel, loadKernel } from "../../../src/geometry/kernel.ts";
import type { Frame } from "../../../src/geometry/solid/frame.ts";
import { mesh } from "../../../src/geometry/solid/mesh.ts";
import { meshMeasures } from "../../../src/geometry/solid/mesh-measures.ts";
import { meshProblem } from "../../../src/geometry/solid/mesh-problem.ts";
import type { Solid } from "../../../src/geometry/solid/solid.ts";
import { rings } from "../path-measures/random-ring.ts";
import { runs } from "../random/runs.ts";
import { circle, raised, rectangle, rounded, sectionAt } from "./recipes.ts";

let kernel: Kernel;
beforeAll(async () => {
  kernel = await loadKernel();
});

const size = fc.integer({ min: 2, max: 30 });
const edge = fc.oneof(
  fc.constant({}),
  fc.constant({ top: { kind: "round", radius: 1.5 } as const }),
  fc.constant({ bottom: { kind: "bevel", inward: 1, down: 0.5 } as const }),
);

/** Pieces on whole numbers, so that faces and edges often fall together, and some that are crooked all over. */
const pieces: fc.Arbitrary<Solid> = fc.oneof(
  fc.tuple(size, size, size, edge).map(
    ([w, d, h, e]): Solid => ({
      ...(raised(rectangle(w + 3, d + 3), h) as Extract<Solid, { kind: "extrude" }>),
      ...e,
    }),
  ),
  fc
    .tuple(size, size, edge)
    .map(
      ([r, h, e]): Solid => ({ ...(raised(circle(r + 2), h) as Extract<Solid, { kind: "extrude" }>), ...e }),
    ),
  fc.tuple(size, size).map(
    ([r, h]): Solid => ({
      kind: "loft",
      sections: [sectionAt(0, circle(r)), sectionAt(h, circle(r / 2, 1, 0))],
    }),
  ),
  fc.tuple(size, size).map(([w, h]): Solid => raised(rounded(w + 10, 12, 3), h, [circle(2)])),
  fc.tuple(rings, size).map(([outer, h]): Solid => raised(outer, h)),
);

const turns = fc.constantFrom(0, 0, 0, Math.PI / 2, Math.PI, 0.3);

const frames: fc.Arbitrary<Frame> = fc
  .record({
    x: fc.integer({ min: -20, max: 20 }),
    y: fc.integer({ min: -20, max: 20 }),
    z: fc.integer({ min: -9, max: 9 }),
    about: turns,
    tip: turns,
  })
  .map(({ x, y, z, about, tip }) => {
    const [c, s, d, t] = [Math.cos(about), Math.sin(about), Math.cos(tip), Math.sin(tip)];
    return {
      origin: { x, y, z },
      u: { x: c, y: s, z: 0 },
      v: { x: -s * d, y: c * d, z: t },
      w: { x: s * t, y: -c * t, z: d },
    };
  });

test("any two solids: each result is closed or empty, and the volumes add up", () => {
  const seen = { tried: 0, apart: 0, inside: 0, both: 0 };
  fc.assert(
    fc.property(pieces, pieces, frames, (a, piece, frame) => {
      const b: Solid = { kind: "place", solid: piece, frame };
      const volumeOf = (solid: Solid): number => {
        const made = mesh(kernel, solid, 0.05);
        if (made.kind === "empty") return 0;
        if (made.kind === "invalid") {
          // Only a random outline may be faulty: it can cross itself where its arcs bulge.
          expect(made.problem).toMatch(/crosses-itself|edge-without-room/);
          return Number.NaN;
        }
        expect(meshProblem(made.mesh)).toBeUndefined();
        return meshMeasures(made.mesh).volume;
      };
      const [one, two] = [volumeOf(a), volumeOf(b)];
      if (Number.isNaN(one) || Number.isNaN(two)) return;
      seen.tried++;
      const both = volumeOf({ kind: "intersect", solids: [a, b] });
      const either = volumeOf({ kind: "union", solids: [a, b] });
      const less = volumeOf({ kind: "cut", from: a, by: [b] });
      if (both === 0) seen.apart++;
      else if (Math.abs(both - Math.min(one, two)) < 1e-3 * both) seen.inside++;
      else seen.both++;
      const slack = 1e-5 * (one + two) + 1e-2;
      expect(Math.abs(either + both - one - two)).toBeLessThan(slack);
      expect(Math.abs(less + both - one)).toBeLessThan(slack);
      expect(kernel.alive()).toBe(0);
    }),
    { seed: 41, numRuns: Math.ceil(runs / 10) },
  );
  expect(seen.tried).toBeGreaterThan(0.7 * (runs / 10));
  expect(Math.min(seen.apart, seen.both)).toBeGreaterThan(0.1 * seen.tried);
  expect(seen.inside).toBeGreaterThan(0);
});
