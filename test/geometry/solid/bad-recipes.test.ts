import { beforeAll, describe, expect, test } from "vitest";
import { type Kernel, loadKernel } from "../../../src/geometry/kernel.ts";
import { upright } from "../../../src/geometry/solid/frame.ts";
import { mesh } from "../../../src/geometry/solid/mesh.ts";
import type { Solid } from "../../../src/geometry/solid/solid.ts";
import type { TriangleMesh } from "../../../src/geometry/solid/triangle-mesh.ts";
import { meshed } from "../../meshed.ts";
import { circle, moved, polygon, raised, rectangle, sectionAt } from "./recipes.ts";

let kernel: Kernel;
beforeAll(async () => {
  kernel = await loadKernel();
});

const meshOf = (solid: Solid, chord?: number): TriangleMesh => meshed(kernel, solid, chord);

describe("bad input has a name, and its place in the recipe", () => {
  const box = raised(rectangle(10, 10), 5);
  const bowtie = polygon([0, 0], [10, 10], [10, 0], [0, 10]);
  const open = { ...rectangle(10, 10), closed: false };
  const withNaN = polygon([0, 0], [Number.NaN, 0], [5, 5]);
  const skewed = { ...upright, u: { x: 1, y: 0.1, z: 0 } };
  const tilted = {
    ...upright,
    origin: { x: 0, y: 0, z: 3 },
    u: { x: 0.6, y: 0, z: -0.8 },
    w: { x: 0.8, y: 0, z: 0.6 },
  };
  const flippedMesh = (): TriangleMesh => {
    const good = meshOf(box);
    return {
      positions: good.positions,
      triangles: good.triangles.map((_, i, all) => all[i - (i % 3) + [0, 2, 1][i % 3]!]!),
    };
  };
  const cases: [string, () => Solid, object][] = [
    ["open where closed is needed", () => raised(open, 5), { problem: "not-closed", at: "extrude" }],
    ["not a number", () => raised(withNaN, 5), { problem: "not-finite" }],
    [
      "a bulge over a half circle",
      () =>
        raised(
          {
            closed: true,
            points: [
              { x: 0, y: 0, bulge: 1.2 },
              { x: 9, y: 0, bulge: 1 },
            ],
          },
          5,
        ),
      { problem: "not-finite" },
    ],
    ["no points", () => raised(polygon(), 5), { problem: "no-area" }],
    ["all on a line", () => raised(polygon([0, 0], [5, 0], [9, 0]), 5), { problem: "no-area" }],
    [
      "a point twice",
      () => raised(polygon([0, 0], [5, 0], [5, 0], [5, 5]), 5),
      { problem: "repeated-point" },
    ],
    ["no height", () => raised(rectangle(5, 5), 0), { problem: "no-height" }],
    ["a height below nothing", () => raised(rectangle(5, 5), -1), { problem: "no-height" }],
    ["a width beyond ten kilometres", () => raised(rectangle(1e8, 5), 5), { problem: "too-large" }],
    ["a height beyond all bounds", () => raised(rectangle(5, 5), 1e300), { problem: "too-large" }],
    ["a place beyond all bounds", () => moved(box, 1e300, 0, 0), { problem: "too-large", at: "place" }],
    ["a place that is no number", () => moved(box, Number.NaN, 0, 0), { problem: "not-finite", at: "place" }],
    ["an endless height", () => raised(rectangle(5, 5), Number.POSITIVE_INFINITY), { problem: "not-finite" }],
    ["a section that crosses itself", () => raised(bowtie, 5), { problem: "no-area" }],
    [
      "another that crosses itself",
      () => raised(polygon([0, 0], [10, 10], [10, 0], [0, 8]), 5),
      { problem: "crosses-itself" },
    ],
    [
      "a spike of no width",
      () => raised(polygon([0, 0], [10, 0], [10, 5], [10, 0], [10, 10], [0, 10]), 5),
      { problem: "crosses-itself" },
    ],
    [
      "a hole over the edge",
      () => raised(rectangle(10, 10), 5, [circle(3, 9, 5)]),
      { problem: "crosses-itself" },
    ],
    ["a hole outside", () => raised(rectangle(10, 10), 5, [circle(3, 30, 5)]), { problem: "hole-outside" }],
    [
      "a hole in a hole",
      () => raised(rectangle(10, 10), 5, [circle(4, 5, 5), circle(1, 5, 5)]),
      { problem: "hole-outside" },
    ],
    ["nothing", () => ({ kind: "union", solids: [] }), { problem: "nothing-given", at: "union" }],
    ["no outline", () => ({ kind: "extrude", outlines: [], height: 5 }), { problem: "nothing-given" }],
    [
      "deep in a recipe",
      () => ({ kind: "cut", from: box, by: [box, { kind: "union", solids: [raised(open, 5)] }] }),
      { problem: "not-closed", at: "cut.by[1].union[0].extrude" },
    ],
    [
      "a frame that isn't square",
      () => ({ kind: "place", solid: box, frame: skewed }),
      { problem: "frame-skewed" },
    ],
    [
      "one section",
      () => ({ kind: "loft", sections: [sectionAt(0, circle(4))] }),
      { problem: "too-few-sections" },
    ],
    [
      "sections unlike",
      () => ({ kind: "loft", sections: [sectionAt(0, circle(4)), sectionAt(9, rectangle(3, 3))] }),
      { problem: "sections-differ" },
    ],
    [
      "sections in one plane",
      () => ({ kind: "loft", sections: [sectionAt(0, circle(4)), sectionAt(0, circle(3))] }),
      { problem: "sections-cross" },
    ],
    [
      "sections to and fro",
      () => ({
        kind: "loft",
        sections: [sectionAt(0, circle(4)), sectionAt(9, circle(3)), sectionAt(5, circle(2))],
      }),
      { problem: "sections-cross" },
    ],
    [
      "sections through each other",
      () => ({
        kind: "loft",
        sections: [sectionAt(0, circle(40)), { kind: "path", path: circle(40), frame: tilted }],
      }),
      { problem: "sections-cross" },
    ],
    [
      "a crossing section",
      () => ({
        kind: "loft",
        sections: [sectionAt(0, polygon([0, 8], [10, 0], [10, 10], [0, 0])), sectionAt(5, rectangle(4, 4))],
      }),
      { problem: "crosses-itself" },
    ],
    [
      "a bevel wider than the part",
      () => ({
        kind: "extrude",
        outlines: [{ outer: rectangle(10, 10), holes: [] }],
        height: 5,
        top: { kind: "bevel", inward: 5, down: 1 },
      }),
      { problem: "edge-without-room" },
    ],
    [
      "a rounding higher than the part",
      () => ({
        kind: "extrude",
        outlines: [{ outer: rectangle(30, 30), holes: [] }],
        height: 5,
        top: { kind: "round", radius: 5.5 },
      }),
      { problem: "edge-without-room" },
    ],
    [
      "a rounding of nothing",
      () => ({
        kind: "extrude",
        outlines: [{ outer: rectangle(30, 30), holes: [] }],
        height: 5,
        top: { kind: "round", radius: 0 },
      }),
      { problem: "edge-without-room" },
    ],
    ["an inside-out mesh", () => ({ kind: "mesh", mesh: flippedMesh() }), { problem: "inside-out" }],
    [
      "an open mesh",
      () => ({ kind: "mesh", mesh: { ...meshOf(box), triangles: meshOf(box).triangles.slice(3) } }),
      { problem: "open-mesh" },
    ],
    [
      "an empty mesh",
      () => ({ kind: "mesh", mesh: { positions: new Float32Array(), triangles: new Uint32Array() } }),
      { problem: "open-mesh" },
    ],
    [
      "a mesh that isn't a number",
      () => ({
        kind: "mesh",
        mesh: { ...meshOf(box), positions: meshOf(box).positions.map((v, i) => (i === 4 ? Number.NaN : v)) },
      }),
      { problem: "not-finite" },
    ],
  ];

  test.each(cases)("%s", (_, solid, expected) => {
    expect(mesh(kernel, solid())).toMatchObject({ kind: "invalid", ...expected });
    expect(kernel.alive()).toBe(0);
  });

  test.each([0, -1, 1e-9, Number.NaN, Number.POSITIVE_INFINITY])("a chord error of %d", (chord) => {
    expect(mesh(kernel, box, chord)).toMatchObject({ kind: "invalid", problem: "chord" });
  });

  test("coordinates of a kilometre are meshed or told, and never hang", () => {
    for (const far of [1e5, 1e6]) {
      const outcome = mesh(kernel, raised(circle(3, far, far), 5), 0.1);
      expect(outcome.kind === "ok" || outcome.kind === "invalid").toBe(true);
      expect(mesh(kernel, raised(rectangle(far, far), 50)).kind).toBe("ok");
    }
  });
});
