import { beforeAll, describe, expect, test } from "vitest";
import { type Kernel, loadKernel } from "../../../src/geometry/kernel.ts";
import { bore } from "../../../src/geometry/solid/bore.ts";
import { upright } from "../../../src/geometry/solid/frame.ts";
import { mesh } from "../../../src/geometry/solid/mesh.ts";
import { meshMeasures } from "../../../src/geometry/solid/mesh-measures.ts";
import { meshProblem } from "../../../src/geometry/solid/mesh-problem.ts";
import { recess } from "../../../src/geometry/solid/recess.ts";
import type { Solid } from "../../../src/geometry/solid/solid.ts";
import { solidMeasures } from "../../../src/geometry/solid/solid-measures.ts";
import type { TriangleMesh } from "../../../src/geometry/solid/triangle-mesh.ts";
import { circle, known, moved, polygon, raised, rectangle, rounded, sectionAt } from "./recipes.ts";

let kernel: Kernel;
beforeAll(async () => {
  kernel = await loadKernel();
});

function meshOf(solid: Solid, chord?: number): TriangleMesh {
  const outcome = mesh(kernel, solid, chord);
  if (outcome.kind !== "ok") throw new Error(JSON.stringify(outcome));
  return outcome.mesh;
}

function bytesOf({ positions, triangles }: TriangleMesh): string {
  const parts = [positions, triangles].map(({ buffer }) => Buffer.from(buffer).toString("base64"));
  return parts.join(" ");
}

describe.each(known)("a $name", ({ solid, volume }) => {
  test("has its volume within 0.01 % at chord 0.01, closed and right side out", () => {
    const made = meshOf(solid);
    expect(meshProblem(made)).toBeUndefined();
    expect(Math.abs(meshMeasures(made).volume / volume - 1)).toBeLessThan(1e-4);
    expect(kernel.alive()).toBe(0);
  });

  test("comes out the same twice, mirrored the other way round, and placed elsewhere", () => {
    const made = meshOf(solid);
    expect(bytesOf(meshOf(solid))).toBe(bytesOf(made));
    const mirror = { ...upright, v: { x: 0, y: -1, z: 0 } };
    const turned = { origin: { x: 100, y: -50, z: 7 }, u: upright.v, v: upright.w, w: upright.u };
    for (const frame of [mirror, turned]) {
      const other = meshOf({ kind: "place", solid, frame });
      expect(meshProblem(other)).toBeUndefined();
      expect(meshMeasures(other).volume).toBeCloseTo(meshMeasures(made).volume, 1);
    }
  });
});

describe("measures", () => {
  const shape: Solid = {
    kind: "extrude",
    outlines: [{ outer: rounded(60, 30, 14), holes: [circle(6, 10, 0)] }],
    base: 2,
    height: 9,
  };
  const angle = 0.7;
  const tilted = {
    origin: { x: 30, y: 10, z: -5 },
    u: { x: Math.cos(angle), y: 0, z: -Math.sin(angle) },
    v: { x: 0, y: 1, z: 0 },
    w: { x: Math.sin(angle), y: 0, z: Math.cos(angle) },
  };

  test.each([
    ["as it stands", shape],
    [
      "tilted, twice",
      { kind: "place", frame: tilted, solid: { kind: "place", frame: tilted, solid: shape } } as Solid,
    ],
  ])("in closed form agree with the mesh: %s", (_, solid) => {
    const exact = solidMeasures(kernel, solid);
    if (exact.kind !== "ok") throw new Error(exact.kind);
    expect(exact.by).toBe("closed-form");
    const near = meshMeasures(meshOf(solid, 0.001));
    expect(Math.abs(near.volume / exact.measures.volume - 1)).toBeLessThan(1e-6);
    for (const key of ["centre", "least", "most"] as const) {
      for (const axis of ["x", "y", "z"] as const) {
        expect(Math.abs(near[key][axis] - exact.measures[key][axis])).toBeLessThan(
          key === "centre" ? 1e-4 : 2e-3,
        );
      }
    }
  });

  test("come from the mesh where the recipe asks for that", () => {
    const cutout = recess(
      shape,
      [{ outer: rectangle(5, 5), holes: [] }],
      { ...upright, origin: { x: -10, y: 0, z: 11 } },
      3,
    );
    const found = solidMeasures(kernel, cutout);
    expect(found).toMatchObject({ kind: "ok", by: "mesh" });
    const whole = solidMeasures(kernel, shape);
    if (found.kind !== "ok" || whole.kind !== "ok") throw new Error(found.kind);
    expect(whole.measures.volume - found.measures.volume).toBeCloseTo(75, 2);
    expect(found.measures.most.z).toBeCloseTo(11, 5);
  });

  test("a bore takes a cylinder out of a slanting face", () => {
    const block = raised(rectangle(40, 40), 40);
    const s = Math.SQRT1_2;
    const at = {
      origin: { x: 20, y: 0, z: 20 },
      u: { x: 0, y: s, z: -s },
      v: { x: -1, y: 0, z: 0 },
      w: { x: 0, y: -s, z: -s },
    };
    const found = solidMeasures(kernel, bore(block, at, 6, 14));
    if (found.kind !== "ok") throw new Error(JSON.stringify(found));
    // Of the cylinder, a hoof stands before the face: cut at 45 degrees through its axis it has 2/3 r³.
    expect(64000 - found.measures.volume).toBeCloseTo(Math.PI * 9 * 14 - (2 / 3) * 27, 1);
  });
});

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

  test("nothing left is empty, not bad", () => {
    expect(mesh(kernel, { kind: "intersect", solids: [box, moved(box, 50, 0, 0)] })).toEqual({
      kind: "empty",
    });
    expect(mesh(kernel, { kind: "cut", from: box, by: [box] })).toEqual({ kind: "empty" });
  });

  test("solids that only touch have nothing in common: a disc with a rounded top under a plate", () => {
    const disc: Solid = {
      kind: "extrude",
      outlines: [{ outer: circle(25), holes: [] }],
      height: 5,
      top: { kind: "round", radius: 1.5 },
    };
    const turned = {
      origin: { x: -8, y: 6, z: -5 },
      u: { x: 0.8, y: 0.6, z: 0 },
      v: { x: -0.6, y: 0.8, z: 0 },
      w: upright.w,
    };
    const both: Solid = {
      kind: "intersect",
      solids: [raised(rounded(60, 50, 9), 2), { kind: "place", solid: disc, frame: turned }],
    };
    expect(mesh(kernel, both)).toEqual({ kind: "empty" });
  });

  test("pieces that hang together along an edge alone are made, closed by their indices", () => {
    const tip = {
      origin: { x: -2, y: 0, z: 0 },
      u: upright.u,
      v: { x: 0, y: 0.8, z: 0.6 },
      w: { x: 0, y: -0.6, z: 0.8 },
    };
    const plate = raised(rounded(12, 12, 3), 2, [circle(2)]);
    const both: Solid = {
      kind: "intersect",
      solids: [plate, { kind: "place", solid: raised(rectangle(5, 5), 2), frame: tip }],
    };
    for (const solid of [
      both,
      {
        kind: "union",
        solids: [raised(rectangle(9, 9), 9), moved(raised(rectangle(9, 9), 9), 9, 9, 0)],
      } as Solid,
    ]) {
      const made = meshOf(solid);
      expect(meshProblem(made)).toBeUndefined();
      const places = new Set(
        Array.from({ length: made.positions.length / 3 }, (_, i) =>
          made.positions.slice(3 * i, 3 * i + 3).join(),
        ),
      );
      expect(places.size).toBeLessThan(made.positions.length / 3);
    }
  });

  test("a cavity stays", () => {
    const hollow: Solid = {
      kind: "cut",
      from: raised(rectangle(30, 30), 30),
      by: [moved(raised(rectangle(10, 10), 10), 10, 10, 10)],
    };
    expect(meshMeasures(meshOf(hollow)).volume).toBeCloseTo(26000, 6);
  });

  test("a rounding exactly as high as the part is made", () => {
    const solid: Solid = {
      kind: "extrude",
      outlines: [{ outer: rectangle(30, 30), holes: [] }],
      height: 5,
      top: { kind: "round", radius: 5 },
    };
    expect(mesh(kernel, solid).kind).toBe("ok");
  });
});

test("a thousand cuts free every shape that they make", () => {
  let made = 0;
  const plate = raised(rectangle(60, 40), 8);
  for (let i = 0; i < 1000; i++) {
    kernel.work((bench) => {
      bench.extrude(
        [
          [
            { x: 0, y: 0 },
            { x: 1, y: 0 },
            { x: 0, y: 1 },
          ],
        ],
        1,
      );
      made += kernel.alive();
    });
    if (i % 50 === 0)
      mesh(kernel, { kind: "cut", from: plate, by: [moved(raised(circle(5), 8), 20 + i / 100, 20, 0)] }, 0.1);
    expect(kernel.alive()).toBe(0);
  }
  expect(made).toBe(2000);
  expect(() =>
    kernel.work((bench) => {
      bench.extrude(
        [
          [
            { x: 0, y: 0 },
            { x: 1, y: 0 },
            { x: 0, y: 1 },
          ],
        ],
        1,
      );
      throw new Error("stop");
    }),
  ).toThrow("stop");
  expect(kernel.alive()).toBe(0);
});

describe("a mesh's saboteurs", () => {
  const good = () => meshOf(raised(rounded(30, 20, 5), 10));

  test("a flipped facet is an open mesh", () => {
    const { positions, triangles } = good();
    const flipped = triangles.slice();
    flipped.set([triangles[1]!, triangles[0]!, triangles[2]!], 0);
    expect(meshProblem({ positions, triangles: flipped })).toBe("open-mesh");
  });

  test("a vertex given twice is an open mesh", () => {
    const { positions, triangles } = good();
    const twice = Float32Array.from([...positions, ...positions.slice(0, 3)]);
    const at = triangles.indexOf(0);
    expect(
      meshProblem({
        positions: twice,
        triangles: triangles.map((v, i) => (i === at ? positions.length / 3 : v)),
      }),
    ).toBe("open-mesh");
  });

  test("a shell turned inside out is told", () => {
    const { positions, triangles } = good();
    const turned = Uint32Array.from(triangles).reverse();
    expect(meshProblem({ positions, triangles: turned })).toBe("inside-out");
  });
});
