import { beforeAll, describe, expect, it } from "vitest";
import { type Kernel, loadKernel } from "../../../src/geometry/kernel.ts";
import { rectangle } from "../../../src/geometry/rectangle.ts";
import { clash } from "../../../src/geometry/solid/clash.ts";
import { mesh } from "../../../src/geometry/solid/mesh.ts";
import type { Solid } from "../../../src/geometry/solid/solid.ts";
import { coreAxes } from "../../../src/instrument/core/from-core.ts";
import { instrument } from "../../../src/instrument/instrument.ts";
import { axesOf } from "../../../src/instrument/recess/axes.ts";
import { floorOf } from "../../../src/instrument/recess/heights.ts";
import { laid } from "../../../src/instrument/recess/outlines.ts";
import { madeRecesses } from "../../../src/instrument/recess/recesses.ts";
import { dimensionOf, type Spec } from "../../../src/order/spec.ts";
import { memoryStore } from "../../../src/step/store.ts";
import { specOf } from "../../samples.ts";

const store = memoryStore();
const made = (spec: Spec) => instrument(spec, store);

describe("on the meshes", () => {
  let kernel: Kernel;
  beforeAll(async () => {
    kernel = await loadKernel();
  });

  const meshes = new Map<Solid, Solid>();
  /** A part's mesh, made once for all that is put into it. */
  function meshOf(recipe: Solid): Solid {
    const known = meshes.get(recipe);
    if (known !== undefined) return known;
    const outcome = mesh(kernel, recipe, 0.005);
    if (outcome.kind !== "ok") throw new Error(outcome.kind);
    const solid: Solid = { kind: "mesh", mesh: outcome.mesh };
    meshes.set(recipe, solid);
    return solid;
  }

  it.each([
    ["sedge", 5],
    ["thrift", 4],
  ] as const)(
    "of %s with %i strings each item lies in its recess with the clearance, and one 0.02 larger doesn't",
    (design, count) => {
      const spec = specOf(design, count);
      const own = made(spec);
      const clearance = dimensionOf(spec, "recess.clearance");
      for (const recess of madeRecesses(own)) {
        const { item, part, id } = recess;
        const thick =
          { neck: "core.depth", body: "body.thickness" }[part as "neck"] ??
          `${part.replace("-", ".")}.thickness`;
        const from = spec.recesses.find((one) => one.id === id)!;
        const turn = (part === "wing-bass" ? -1 : 1) * from.turn;
        const floor = floorOf(recess, dimensionOf(spec, thick));
        /** The item's own body, grown a side, standing so high over the floor. */
        const body = (grown: number, over: number): Solid => {
          const shape = item!.body;
          const plain =
            shape.shape === "box"
              ? rectangle(
                  -shape.length / 2 - grown,
                  -shape.width / 2 - grown,
                  shape.length / 2 + grown,
                  shape.width / 2 + grown,
                )
              : {
                  closed: true,
                  points: [1, -1].map((s) => ({ x: s * (shape.diameter / 2 + grown), y: 0, bulge: 1 })),
                };
          const outer = laid(plain, turn, recess.at);
          const height = item!.depth;
          const raised: Solid = {
            kind: "extrude",
            outlines: [{ outer, holes: [] }],
            base: floor - over - height,
            height,
          };
          return {
            kind: "place",
            solid: { kind: "place", solid: raised, frame: axesOf(part, spec, own) },
            frame: coreAxes(own.core),
          };
        };
        const recipe =
          part === "neck"
            ? own.neckSolid
            : part === "body"
              ? own.body!.solid
              : own.wings![part === "wing-bass" ? "bass" : "treble"].solid;
        const solid = meshOf(recipe);
        const fits = clash(kernel, body(0, clearance), solid, 0.005);
        if (fits.kind !== "ok") throw new Error(fits.kind);
        expect(fits.interference, id).toBe(0);
        expect(Math.abs(fits.gap - clearance), id).toBeLessThan(0.006);
        const large = clash(kernel, body(clearance + 0.02, clearance), solid, 0.005);
        if (large.kind !== "ok") throw new Error(large.kind);
        expect(large.interference, id).toBeGreaterThan(0.5);
        // Its cover's underside is just over it.
        const cover = own.covers.find((one) => one.recess.id === id)!.solid();
        const under = clash(kernel, body(0, 0), cover, 0.005);
        if (under.kind !== "ok") throw new Error(under.kind);
        expect(under.interference, id).toBe(0);
        if (item!.shaft === null) expect(under.gap, id).toBeCloseTo(clearance, 3);
        const closed = clash(kernel, cover, solid, 0.005);
        if (closed.kind !== "ok") throw new Error(closed.kind);
        expect(closed.interference, id).toBeLessThan(0.01);
        expect(closed.contact, id).toBeGreaterThan(100);
      }
    },
  );
});
