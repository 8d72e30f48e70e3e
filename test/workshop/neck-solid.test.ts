import { beforeAll, describe, expect, it } from "vitest";
import { type Kernel, loadKernel } from "../../src/geometry/kernel.ts";
import { extentsOf } from "../../src/geometry/measure.ts";
import { meshMeasures } from "../../src/geometry/solid/mesh-measures.ts";
import { meshProblem } from "../../src/geometry/solid/mesh-problem.ts";
import type { Solid } from "../../src/geometry/solid/solid.ts";
import type { TriangleMesh } from "../../src/geometry/solid/triangle-mesh.ts";
import { contradictions } from "../../src/instrument/contradictions.ts";
import { boardTop } from "../../src/instrument/fingerboard/surface.ts";
import { boardWidth } from "../../src/instrument/fingerboard/taper.ts";
import { instrument } from "../../src/instrument/instrument.ts";
import { catalogue } from "../../src/order/catalogue.ts";
import { quantityText } from "../../src/order/quantity.ts";
import type { Options } from "../../src/order/resolve.ts";
import { memoryStore } from "../../src/step/store.ts";
import { type Model, modelOf } from "../../src/workshop/model.ts";
import { solidFiles } from "../../src/workshop/solids/solids.ts";
import { meshed } from "../meshed.ts";
import { someCounts, specOf } from "../samples.ts";
import { heightsAt } from "./slice.ts";

let kernel: Kernel;
beforeAll(async () => {
  kernel = await loadKernel();
});

const meshOf = (solid: Solid, chord = 0.02): TriangleMesh => meshed(kernel, solid, chord);

function neckOf(design: string, count: number, more = "", options: Options = {}) {
  const store = memoryStore();
  const model = modelOf(specOf(design, count, more, options), store);
  const file = solidFiles(model).find(({ name }) => name === "neck")!;
  return { model, made: meshOf(file.solid(store)) };
}

/** What must hold of the mesh of any neck: its outlines' extents, its named thicknesses, its width, all by slicing. */
function soundNeck({ spec, instrument: made }: Model, neck: TriangleMesh): void {
  expect(meshProblem(neck)).toBeUndefined();
  const { least, most } = meshMeasures(neck);
  if (made.neckPlan.kind !== "ok" || made.neckSide.kind !== "ok") throw new Error("no outlines");
  const [plan, side] = [extentsOf([made.neckPlan.path])!, extentsOf([made.neckSide.path])!];
  const wanted = [plan.minX, plan.maxX, plan.minY, plan.maxY, side.minY, side.maxY];
  const found = [least.x, most.x, least.y, most.y, least.z, most.z];
  for (const [i, value] of wanted.entries())
    expect(Math.abs(found[i]! - value), `extent ${i}`).toBeLessThan(0.03);
  for (const where of ["nut", "heel"] as const) {
    const x = spec.values[`neck.station.${where}`]!.value;
    // A little aside: the middle of the back is where triangles meet.
    const heights = heightsAt(neck, x + 1e-4, 1e-3);
    const thickness = boardTop(made.surface, x, 0) - heights[0]!;
    expect(Math.abs(thickness - spec.values[`neck.thickness.${where}`]!.value), where).toBeLessThan(0.02);
    const half = boardWidth(made.taper, x) / 2;
    expect(heightsAt(neck, x, half - 0.05)).toHaveLength(2);
    expect(heightsAt(neck, x, half + 0.05)).toHaveLength(0);
  }
}

it("slicing finds the heights of a plain box, and none beside it", () => {
  const box = meshOf({
    ...{ kind: "extrude", base: -2, height: 5 },
    outlines: [
      {
        outer: {
          closed: true,
          points: [
            [0, 0],
            [4, 0],
            [4, 3],
            [0, 3],
          ].map(([x, y]) => ({ x: x!, y: y!, bulge: 0 })),
        },
        holes: [],
      },
    ],
  });
  expect(heightsAt(box, 1, 2.5)).toEqual([-2, 3]);
  expect(heightsAt(box, 5, 1)).toEqual([]);
});

describe.each(someCounts)("the finished neck of $design with $count strings", ({ design, count }) => {
  it("is one closed solid with the outlines' extents, its named thicknesses and its widths", () => {
    const { model, made } = neckOf(design, count);
    soundNeck(model, made);
  });

  it("of the other hand is the same turned over", () => {
    const [right, left] = [neckOf(design, count), neckOf(design, count, "", { hand: "left" })].map(
      ({ made }) => meshMeasures(made),
    );
    expect(Math.abs(left!.volume / right!.volume - 1)).toBeLessThan(1e-6);
    for (const [ours, theirs] of [
      [left!.least.x, right!.least.x],
      [left!.most.x, right!.most.x],
      [left!.least.y, -right!.most.y],
      [left!.most.y, -right!.least.y],
      [left!.least.z, right!.least.z],
      [left!.centre.y, -right!.centre.y],
    ] as const)
      expect(Math.abs(ours - theirs)).toBeLessThan(1e-6 * 1000);
  });
});

/** A fixed sample of the ends of ranges: by day sixty, at night all. */
function sampledEnds() {
  const all = someCounts.flatMap(({ design, count }) => {
    const { values } = specOf(design, count);
    return catalogue
      .filter(({ id }) => /^(neck|head|core|tuner|rod|pin|nut|fingerboard)\./.test(id))
      .flatMap(({ id, kind }) =>
        [values[id]!.least, values[id]!.most].map((end) => ({
          design,
          count,
          set: `${id}: ${quantityText(end, kind)}`,
        })),
      );
  });
  if (process.env.NIGHTLY !== undefined) return all;
  // A step that shares no factor with the list's length comes by every place.
  return Array.from({ length: 60 }, (_, i) => all[(i * 97 + 11) % all.length]!);
}

describe("necks at the ends of ranges", () => {
  let built = 0;
  const sample = sampledEnds();
  it.each(sample)("$design with $count strings and $set", ({ design, count, set }) => {
    const more = `set:\n  ${set}\n`;
    const spec = specOf(design, count, more);
    if (contradictions(spec, instrument(spec, memoryStore())).length > 0) return;
    const { model, made } = neckOf(design, count, more);
    soundNeck(model, made);
    built++;
  });

  it("were nearly all built", () => {
    expect(new Set(sample.map((entry) => JSON.stringify(entry))).size).toBe(sample.length);
    expect(built).toBeGreaterThan(0.9 * sample.length);
  });
});
