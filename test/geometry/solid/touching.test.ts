import { beforeAll, describe, expect, test } from "vitest";
import { type Kernel, loadKernel } from "../../../src/geometry/kernel.ts";
import { upright } from "../../../src/geometry/solid/frame.ts";
import { mesh } from "../../../src/geometry/solid/mesh.ts";
import { meshMeasures } from "../../../src/geometry/solid/mesh-measures.ts";
import { meshProblem } from "../../../src/geometry/solid/mesh-problem.ts";
import type { Solid } from "../../../src/geometry/solid/solid.ts";
import type { TriangleMesh } from "../../../src/geometry/solid/triangle-mesh.ts";
import { meshed } from "../../meshed.ts";
import { circle, moved, raised, rectangle, rounded } from "./recipes.ts";

let kernel: Kernel;
beforeAll(async () => {
  kernel = await loadKernel();
});

const meshOf = (solid: Solid, chord?: number): TriangleMesh => meshed(kernel, solid, chord);

describe("solids that touch, hang together or leave nothing", () => {
  const box = raised(rectangle(10, 10), 5);

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
