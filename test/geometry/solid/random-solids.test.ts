import fc from "fast-check";
import { beforeAll, expect, test } from "vitest";
import { type Kernel, loadKernel } from "../../../src/geometry/kernel.ts";
import { clash } from "../../../src/geometry/solid/clash.ts";
import type { Frame } from "../../../src/geometry/solid/frame.ts";
import { mesh } from "../../../src/geometry/solid/mesh.ts";
import { meshMeasures } from "../../../src/geometry/solid/mesh-measures.ts";
import { meshProblem } from "../../../src/geometry/solid/mesh-problem.ts";
import type { Solid } from "../../../src/geometry/solid/solid.ts";
import { rings } from "../path-measures/random-ring.ts";
import { runs } from "../random/runs.ts";
import { circle, polygon, raised, rectangle, rounded, sectionAt } from "./recipes.ts";

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
  const seen = { tried: 0, apart: 0, inside: 0, both: 0, gaps: 0, touching: 0 };
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
      const [here, there] = [clash(kernel, a, b, 0.05), clash(kernel, b, a, 0.05)];
      if (here.kind !== "ok" || there.kind !== "ok") throw new Error(here.kind);
      expect(Math.abs(here.interference - both)).toBeLessThan(slack);
      expect(Math.abs(here.gap - there.gap)).toBeLessThan(1e-4);
      expect(Math.abs(here.contact - there.contact)).toBeLessThan(1e-3 * here.contact + 1e-3);
      if (both > 0) expect(here.gap).toBe(0);
      if (here.gap > 0.01) expect(here.contact).toBe(0);
      if (here.gap > 0) seen.gaps++;
      if (here.contact > 0) seen.touching++;
      expect(kernel.alive()).toBe(0);
    }),
    { seed: 41, numRuns: Math.ceil(runs / 10) },
  );
  expect(seen.tried).toBeGreaterThan(0.7 * (runs / 10));
  expect(Math.min(seen.apart, seen.both)).toBeGreaterThan(0.1 * seen.tried);
  expect(Math.min(seen.inside, seen.gaps, seen.touching)).toBeGreaterThan(0);
});

test("lofts of random polygons, twisted as they come, have the volume that Simpson's rule gives the ruled solid", () => {
  const corner = fc.record({ low: fc.integer({ min: 10, max: 20 }), high: fc.integer({ min: 10, max: 20 }) });
  const loft = fc.record({
    corners: fc.array(corner, { minLength: 3, maxLength: 9 }),
    height: fc.integer({ min: 5, max: 60 }),
    turn: fc.double({ min: -0.6, max: 0.6, noNaN: true }),
    down: fc.boolean(),
    clockwise: fc.boolean(),
  });
  let twisted = 0;
  fc.assert(
    fc.property(loft, ({ corners, height, turn, down, clockwise }) => {
      const hand = clockwise ? -1 : 1;
      const ring = (key: "low" | "high", by: number): [number, number][] =>
        corners.map((c, i) => {
          const angle = hand * ((2 * Math.PI * i) / corners.length + by);
          return [c[key] * Math.cos(angle), c[key] * Math.sin(angle)];
        });
      const [low, high] = [ring("low", 0), ring("high", turn)];
      const middle = low.map(([x, y], i): [number, number] => [(x + high[i]![0]) / 2, (y + high[i]![1]) / 2]);
      const area = (points: [number, number][]) =>
        Math.abs(
          points.reduce((sum, [x, y], i) => sum + points.at(i - 1)![0] * y - x * points.at(i - 1)![1], 0),
        ) / 2;
      const sections = [sectionAt(0, polygon(...low)), sectionAt(down ? -height : height, polygon(...high))];
      const made = mesh(kernel, { kind: "loft", sections });
      if (made.kind !== "ok") throw new Error(JSON.stringify(made));
      if (made.mesh.positions.length / 3 > 2 * corners.length) twisted++;
      const wanted = (height / 6) * (area(low) + 4 * area(middle) + area(high));
      expect(Math.abs(meshMeasures(made.mesh).volume / wanted - 1)).toBeLessThan(1e-4);
      expect(meshProblem(made.mesh)).toBeUndefined();
    }),
    { seed: 42, numRuns: Math.ceil(runs / 10) },
  );
  expect(twisted).toBeGreaterThan(runs / 20);
});

test("whatever the recipe, the outcome has a name", () => {
  const number = fc.oneof(
    { weight: 12, arbitrary: fc.integer({ min: -4, max: 4 }) },
    { weight: 1, arbitrary: fc.constantFrom(Number.NaN, Number.POSITIVE_INFINITY, 1e300, 5e-324, 1e6, 1e-7) },
  );
  const bulge = fc.oneof(
    { weight: 6, arbitrary: fc.constant(0) },
    { weight: 3, arbitrary: fc.double({ min: -1, max: 1, noNaN: true }) },
    { weight: 1, arbitrary: fc.constantFrom(1, -1, 1.1, Number.NaN, 1e-13) },
  );
  const path = fc.record({
    closed: fc.oneof(
      { weight: 9, arbitrary: fc.constant(true) },
      { weight: 1, arbitrary: fc.constant(false) },
    ),
    points: fc.array(fc.record({ x: number, y: number, bulge }), { maxLength: 6 }),
  });
  const place = fc.record({ x: number, y: number, z: number });
  const section = fc.oneof(
    { weight: 4, arbitrary: fc.tuple(path, number).map(([p, z]) => sectionAt(z, p)) },
    { weight: 1, arbitrary: place.map((at) => ({ kind: "point" as const, at })) },
  );
  const extrude = fc
    .record({ outer: path, holes: fc.array(path, { maxLength: 1 }), height: number, base: number, edge })
    .map(
      ({ outer, holes, height, base, edge }): Solid => ({
        kind: "extrude",
        outlines: [{ outer, holes }],
        height,
        base,
        ...edge,
      }),
    );
  const leaf: fc.Arbitrary<Solid> = fc.oneof(
    extrude,
    extrude,
    fc.array(section, { maxLength: 3 }).map((sections): Solid => ({ kind: "loft", sections })),
    pieces,
  );
  const tree: fc.Arbitrary<Solid> = fc.oneof(
    { weight: 4, arbitrary: leaf },
    {
      weight: 1,
      arbitrary: fc
        .tuple(leaf, fc.array(leaf, { maxLength: 2 }))
        .map(([from, by]): Solid => ({ kind: "cut", from, by })),
    },
    {
      weight: 1,
      arbitrary: fc.array(leaf, { maxLength: 2 }).map((solids): Solid => ({ kind: "union", solids })),
    },
  );
  const seen = new Map<string, number>();
  fc.assert(
    fc.property(tree, (solid) => {
      const made = mesh(kernel, solid, 0.1);
      const kind = made.kind === "invalid" ? made.problem : made.kind;
      seen.set(kind, (seen.get(kind) ?? 0) + 1);
      if (made.kind === "ok") expect(meshProblem(made.mesh)).toBeUndefined();
      expect(kernel.alive()).toBe(0);
    }),
    { seed: 43, numRuns: Math.ceil(runs / 2) },
  );
  const wanted = [
    "ok",
    "not-finite",
    "too-large",
    "not-closed",
    "no-area",
    "repeated-point",
    "crosses-itself",
    "no-height",
  ];
  for (const kind of [...wanted, "nothing-given", "too-few-sections", "sections-cross", "sections-differ"]) {
    expect(seen.get(kind) ?? 0, kind).toBeGreaterThan(0);
  }
  expect(seen.get("refused") ?? 0).toBe(0);
});
