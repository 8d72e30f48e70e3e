import { beforeAll, describe, expect, it } from "vitest";
import { type Kernel, loadKernel } from "../../src/geometry/kernel.ts";
import { meshMeasures } from "../../src/geometry/solid/mesh-measures.ts";
import { meshProblem } from "../../src/geometry/solid/mesh-problem.ts";
import type { Solid } from "../../src/geometry/solid/solid.ts";
import type { TriangleMesh } from "../../src/geometry/solid/triangle-mesh.ts";
import { boardSolid } from "../../src/instrument/fingerboard/board-solid.ts";
import { memoryStore } from "../../src/step/store.ts";
import { type Model, modelOf } from "../../src/workshop/model.ts";
import { solidFiles } from "../../src/workshop/solids/solids.ts";
import { meshed } from "../meshed.ts";
import { ownBoard } from "../own-board.ts";
import { hits } from "../ray.ts";
import { someCounts, specOf } from "../samples.ts";
import { bareBoard, fine, numbers } from "./bare-board.ts";

let kernel: Kernel;
beforeAll(async () => {
  kernel = await loadKernel();
});

const meshOf = (solid: Solid, chord: number): TriangleMesh => meshed(kernel, solid, chord);

/** How far, at most, the gaps that are reported stray from those found by rays down from each string's underside. */
function astray(model: Model, surface: TriangleMesh): number {
  const { spec, instrument: made } = model;
  const all = numbers(model);
  const length = spec.values["string.length"]!.value;
  const crown = spec.frets === null ? 0 : all["fret.crown.height"]!;
  const off = spec.strings.flatMap(({ name, diameter }, i) => {
    const at = (from: number, to: number, x: number) => from + ((to - from) * x) / length;
    const found = (x: number) => {
      const y = at(made.layout.nut[i]!, made.layout.bridge[i]!, x);
      const z = at(made.heights.nut[i]!, made.heights.bridge[i]!, x) - diameter / 2;
      const [first] = hits(surface, [x, y, z + 5], [0, 0, -1]);
      return first! - 5 - crown;
    };
    const stations = spec.stations.fingerboard.map((x) => [x, `${x}`] as const);
    // A hair inside the ends, whose faces stand along the ray.
    const ends = [[1e-4, "nut"] as const, [all["fingerboard.length"]! - 1e-4, "end"] as const];
    return [...stations, ...ends].map(([x, id]) => Math.abs(found(x) - all[`string.${name}.gap.${id}`]!));
  });
  expect(off).toHaveLength(spec.strings.length * (spec.stations.fingerboard.length + 2));
  return Math.max(...off);
}

/** The volume under the playing surface within the outline, by Simpson's rule along and across, from the report's numbers alone. */
function ownVolume(model: Model): number {
  const all = numbers(model);
  const { length, half, middle, radius } = ownBoard(model.spec, all);
  const r = all["fingerboard.corner"]!;
  const b = (half(length) - half(0)) / length;
  const s = Math.hypot(1, b);
  const [cx, cy] = [length - r, half(length - r) - r * s];
  const rounded = (x: number) => {
    const on = cy + Math.sqrt(Math.max(0, r * r - (x - cx) ** 2));
    return x > cx - (r * b) / s ? on : half(x);
  };
  const simpson = (from: number, to: number, n: number, f: (t: number) => number) => {
    let sum = f(from) + f(to);
    for (let i = 1; i < n; i++) sum += (i % 2 === 1 ? 4 : 2) * f(from + ((to - from) * i) / n);
    return (sum * (to - from)) / n / 3;
  };
  const area = (x: number) => {
    const [m, rr, h] = [middle(x), radius(x), rounded(x)];
    return simpson(-h, h, 64, (y) => m.z + Math.sqrt(rr * rr - (y - m.y) ** 2));
  };
  const turn = cx - (r * b) / s;
  // Round the corner by its angle, in which it is smooth.
  const corner = simpson(0, Math.PI / 2, 200, (a) => {
    const x = turn + (length - turn) * (1 - Math.cos(a));
    return area(Math.min(length, x)) * (length - turn) * Math.sin(a);
  });
  return simpson(0, turn, 100, area) + corner;
}

describe.each(someCounts)("the finished board of $design with $count strings", ({ design, count }) => {
  const model = modelOf(specOf(design, count), memoryStore());

  it("lies under every string as far as reported, and has the volume of its surface", () => {
    const made = bareBoard(kernel, model);
    expect(meshProblem(made)).toBeUndefined();
    // The bar is 0.01; a mesh as fine as this is held to less, so that a small error shows.
    expect(astray(model, made)).toBeLessThan(0.003);
    const { volume, least, most } = meshMeasures(made);
    expect(Math.abs(volume / ownVolume(model) - 1)).toBeLessThan(5e-5);
    const all = numbers(model);
    expect([least.x, least.z]).toEqual([0, 0]);
    expect(most.x).toBeCloseTo(all["fingerboard.length"]!, 4);
    const widest = ownBoard(model.spec, all).half(all["fingerboard.length"]! - all["fingerboard.corner"]!);
    expect(most.y).toBeGreaterThan(widest - 0.01);
  });

  it("with all that is let into it is one closed solid, for either hand", () => {
    const [right, left] = (["right", "left"] as const).map((hand) => {
      const store = memoryStore();
      const other = modelOf({ ...model.spec, hand }, store);
      const file = solidFiles(other).find(({ name }) => name === "fingerboard")!;
      return meshMeasures(meshOf(file.solid(store), 0.03));
    });
    expect(right!.volume).toBeLessThan(ownVolume(model) * (1 + 5e-5));
    expect(Math.abs(left!.volume / right!.volume - 1)).toBeLessThan(1e-6);
    expect(left!.centre.y).toBeCloseTo(-right!.centre.y, 3);
  });
});

describe("a board with a fault planted in it", () => {
  const model = modelOf(specOf("sedge", 4), memoryStore());
  it("is found by the rays: a radius 0.05 off, an edge 0.01 off, a scoop 0.02 off", () => {
    const { surface } = model.instrument;
    expect(astray(model, bareBoard(kernel, model, { radius: surface.radius + 0.05 }))).toBeGreaterThan(0.003);
    expect(astray(model, bareBoard(kernel, model, { radius: surface.radius - 0.05 }))).toBeGreaterThan(0.003);
    expect(astray(model, bareBoard(kernel, model, { edge: surface.edge + 0.01 }))).toBeGreaterThan(0.009);
    const scoop = { high: surface.scoop.high, low: surface.scoop.low + 0.02 };
    expect(astray(model, bareBoard(kernel, model, { scoop }))).toBeGreaterThan(0.01);
  });

  it("is found by the volume: a corner left square, a radius 0.05 off", () => {
    const { board } = model.instrument.boardSolidInput;
    const { length, nut, end } = board.taper;
    const corner = (x: number, y: number) => ({ x, y, bulge: 0 });
    const square = {
      closed: true,
      points: [
        ...[corner(0, -nut / 2), corner(length, -end / 2)],
        ...[corner(length, end / 2), corner(0, nut / 2)],
      ],
    };
    const off = (solid: Solid) => Math.abs(meshMeasures(meshOf(solid, fine)).volume / ownVolume(model) - 1);
    expect(off(boardSolid.work({ board, outline: square, cutters: [] }))).toBeGreaterThan(5e-5);
    const flatter = { ...board, radius: board.radius + 0.05 };
    const { outline } = model.instrument.boardSolidInput;
    expect(off(boardSolid.work({ board: flatter, outline, cutters: [] }))).toBeGreaterThan(1e-4);
  });
});
