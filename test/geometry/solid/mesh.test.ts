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
import { meshed } from "../../meshed.ts";
import { circle, known, moved, raised, rectangle, rounded } from "./recipes.ts";

let kernel: Kernel;
beforeAll(async () => {
  kernel = await loadKernel();
});

const meshOf = (solid: Solid, chord?: number): TriangleMesh => meshed(kernel, solid, chord);

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
