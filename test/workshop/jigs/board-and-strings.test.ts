import { beforeAll, describe, expect, it } from "vitest";
import { circle } from "../../../src/geometry/circle.ts";
import { type Kernel, loadKernel } from "../../../src/geometry/kernel.ts";
import { meshMeasures } from "../../../src/geometry/solid/mesh-measures.ts";
import type { Solid } from "../../../src/geometry/solid/solid.ts";
import type { TriangleMesh } from "../../../src/geometry/solid/triangle-mesh.ts";
import { boardRadius } from "../../../src/instrument/fingerboard/surface.ts";
import { paperThickness } from "../../../src/workshop/jigs/sanding-block.ts";
import { hits } from "../../ray.ts";
import { specOf } from "../../samples.ts";
import { asSolid, box, inBoth, looked, type Made, madeOf, meshed } from "./look.ts";

let kernel: Kernel;
beforeAll(async () => {
  kernel = await loadKernel();
});

/** How high the lower edge of a plate lies over a place across, at some height over the bed. */
function under(mesh: TriangleMesh, x: number, z: number): number {
  return hits(mesh, [x, -500, z], [0, 1, 0])[0]! - 500;
}

/** How far facets and rounding may put an edge from where it should be, mm. */
const near = 0.035;

/** Looks at a hollow whose top is at y = 0, at some height over the bed, at places across. */
function isHollow(mesh: TriangleMesh, radius: number, places: readonly number[], z: number): boolean {
  return places.every((x) => Math.abs(under(mesh, x, z) + radius - Math.sqrt(radius ** 2 - x ** 2)) < near);
}

const cone = { ...specOf("sedge", 5), surface: "cone" } as const;
const boards = [...looked, { design: "sedge as a cone", count: 5, spec: () => cone }];

describe.each(boards)("what a board of $design with $count strings is shaped by", ({ spec }) => {
  const { model, files, meshOf } = madeOf(() => kernel, spec());
  const { surface } = model.instrument;
  const { length } = surface.taper;

  it("are gauges of the board's own radius at each place, at least as wide as it", () => {
    const names = files.map(({ name }) => name).filter((name) => name.startsWith("radius"));
    const stations = model.spec.stations.fingerboard.filter((x) => x > 0 && x < length);
    expect(names).toHaveLength(surface.kind === "cylinder" ? 1 : stations.length + 2);
    for (const name of names) {
      const at = name.slice("radius-".length);
      const x = at === "nut" ? 0 : at === "end" || at === "" ? length : Number(at);
      const gauge = meshOf(name);
      const wanted = boardRadius(surface, x);
      const width = surface.taper.nut + ((surface.taper.end - surface.taper.nut) * x) / length;
      const places = [-0.49, -0.31, 0, 0.27, 0.49].map((share) => share * width);
      expect(isHollow(gauge, wanted, places, 1), name).toBe(true);
      expect(isHollow(gauge, wanted * 1.05, places, 1), name).toBe(false);
      expect(meshMeasures(gauge).most.x).toBeGreaterThan(width / 2 + 1.2);
    }
  });

  it("are blocks that follow each other along a cone and leave room for the paper", () => {
    const names = files.map(({ name }) => name).filter((name) => name.startsWith("sanding-block"));
    let along = 0;
    for (const name of names) {
      const block = meshOf(name);
      const long = meshMeasures(block).most.z - 0.6;
      for (const [z, x] of [
        [0.01, along],
        [long - 0.01, along + long],
      ] as const) {
        const wanted = boardRadius(surface, surface.kind === "cone" ? x : length) + paperThickness;
        expect(isHollow(block, wanted, [-10, -4, 0, 6, 10], z), `${name} ${z}`).toBe(true);
        expect(isHollow(block, wanted * 1.06, [-10, -4, 0, 6, 10], z), `${name} ${z}`).toBe(false);
      }
      along += long;
    }
    if (surface.kind === "cone") expect(along).toBeCloseTo(length, 3);
    else expect(names).toHaveLength(1);
  });
});

/** A thin pencil in each string's place at an edge, which only a notch lets in; `height` is the edge's there. */
function pencils(
  made: Made,
  name: string,
  places: readonly number[],
  height: (y: number) => number,
): number[] {
  return places.map((y) =>
    inBoth(kernel, asSolid(made.meshOf(name)), {
      ...{ kind: "extrude", base: -1, height: 9 },
      outlines: [{ outer: circle({ x: y, y: height(y) + 0.9 }, 0.25), holes: [] }],
    }),
  );
}

describe.each(looked)("the notches for $count strings of $design", ({ design, count, spec }) => {
  const made = madeOf(() => kernel, spec());
  const { layout, crown, taper } = made.model.instrument;
  const arc = (y: number) => Math.sqrt(crown.radius ** 2 - (y - crown.centre.x) ** 2) - crown.radius;

  it("stand where the strings do, on nut and bridge, and not where another count's do", () => {
    expect(Math.max(...pencils(made, "notches-nut", layout.nut, () => 0))).toBeLessThan(1e-6);
    expect(Math.max(...pencils(made, "notches-bridge", layout.bridge, arc))).toBeLessThan(1e-6);
    const other = madeOf(() => kernel, specOf(design, count === 4 ? 5 : 4)).model.instrument.layout;
    expect(Math.max(...pencils(made, "notches-nut", other.nut, () => 0))).toBeGreaterThan(0.1);
    expect(Math.max(...pencils(made, "notches-bridge", other.bridge, arc))).toBeGreaterThan(0.1);
  });

  it("are of a gauge that goes over the nut with the slide clearance and ends flush with the crown", () => {
    const gauge = made.meshOf("notches-nut");
    const [, from, to] = hits(gauge, [-500, -2, 1], [1, 0, 0]);
    expect(to! - from! - taper.nut).toBeCloseTo(0.5, 3);
    const margin = made.model.spec.values["bridge.margin"]!.value;
    const sides = hits(made.meshOf("notches-bridge"), [-500, 1, 1], [1, 0, 0]);
    expect(sides[0]! - 500).toBeCloseTo(layout.bridge.at(-1)! - margin, 3);
    expect(sides.at(-1)! - 500).toBeCloseTo(layout.bridge[0]! + margin, 3);
  });
});

describe("the notches of a left-hand order", () => {
  it("are the other way round, and their letters aren't", () => {
    const [right, left] = ["right", "left"].map((hand) =>
      madeOf(() => kernel, specOf("sedge", 5, "", { hand: hand as "left" })),
    );
    const turned = left!.model.instrument.layout.nut.map((y) => -y);
    expect(Math.max(...pencils(left!, "notches-nut", turned, () => 0))).toBeLessThan(1e-6);
    // The letters of the first two lines, over the plate's face: the same, not mirror images.
    const letters = [right!, left!].map((one): Solid => {
      const solids = [asSolid(one.meshOf("notches-nut")), box([-40, 10, 4.1], [40, 40, 6])];
      return { kind: "intersect", solids };
    });
    const { volume } = meshMeasures(meshed(kernel, letters[0]!));
    expect(volume).toBeGreaterThan(10);
    expect(inBoth(kernel, letters[0]!, letters[1]!) / volume).toBeGreaterThan(0.95);
  });
});
