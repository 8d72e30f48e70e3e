import { beforeAll, describe, expect, it } from "vitest";
import { type Kernel, loadKernel } from "../../../src/geometry/kernel.ts";
import { meshMeasures } from "../../../src/geometry/solid/mesh-measures.ts";
import type { Spec } from "../../../src/order/spec.ts";
import { memoryStore } from "../../../src/step/store.ts";
import { jigsOf } from "../../../src/workshop/jigs/jigs.ts";
import { modelOf } from "../../../src/workshop/model.ts";
import { jigFiles } from "../../../src/workshop/solids/jigs.ts";
import { specOf } from "../../samples.ts";
import { asSolid, box, looked, madeOf, meshed, piecesIn } from "./look.ts";

let kernel: Kernel;
beforeAll(async () => {
  kernel = await loadKernel();
});

/** A spec whose shop has this printer, or none. */
function printedOn(spec: Spec, bed: readonly number[] | null): Spec {
  const others = spec.shop.machines.filter(({ kind }) => kind !== "printer");
  const printer = { id: "p", kind: "printer", bed, nozzle: 0.4, layer: 0.2, "hole-growth": 0.3 } as const;
  const machines = bed === null ? others : [...others, { ...printer, bed }];
  return { ...spec, shop: { ...spec.shop, machines } };
}

describe.each(looked)("the jigs of $design with $count strings", ({ spec }) => {
  const { model, files, meshOf } = madeOf(() => kernel, spec());
  const [bed] = model.spec.shop.machines.flatMap((machine) =>
    machine.kind === "printer" ? [machine.bed] : [],
  );

  it("are each one closed piece that goes onto the bed", () => {
    expect(files.length).toBeGreaterThan(3);
    for (const { name } of files) {
      const made = meshOf(name);
      const { volume, least, most } = meshMeasures(made);
      expect(volume, name).toBeGreaterThan(500);
      expect(piecesIn(made), name).toBe(1);
      const size = [most.x - least.x, most.y - least.y, most.z - least.z];
      for (const [k, length] of size.entries()) expect(length, `${name} ${k}`).toBeLessThan(bed![k]!);
      expect(least.z, name).toBeCloseTo(0, 4);
    }
  });

  it("say what they are for and that they guide no cutter, each by a name of its own", () => {
    expect(new Set(files.map(({ name }) => name)).size).toBe(files.length);
    for (const { what, folder } of files) {
      expect(what).toMatch(/never guides a cutter, guards, or clamps near one$/);
      expect(folder).toBe("printed");
    }
  });
});

describe("a shop's printer", () => {
  const spec = specOf("sedge", 5);
  const of = (bed: readonly number[] | null) => modelOf(printedOn(spec, bed), memoryStore());

  it("that is missing, or whose bed isn't known, makes no jigs", () => {
    expect(jigFiles(of(null))).toEqual([]);
    expect(jigFiles(of([220, 220]))).toEqual([]);
    expect(jigsOf(of(null)).kind).toBe("none");
  });

  it("with a small bed makes those jigs that it holds, in more pieces, and leaves out no other", () => {
    const [large, small] = [of([220, 220, 250]), of([130, 110, 120])];
    const made = jigsOf(small);
    if (made.kind !== "ok") throw new Error("no printer");
    for (const { name, size, files } of made.jigs) {
      const holds = size.x <= 120 && size.y <= 100 && size.z <= 120;
      expect(files.length > 0, name).toBe(holds);
    }
    const names = (model: typeof large) => jigFiles(model).map(({ name }) => name);
    expect(names(small)).not.toEqual(names(large));
    const store = memoryStore();
    for (const file of jigFiles(small)) {
      const { least, most } = meshMeasures(meshed(kernel, file.solid(store)));
      expect(most.x - least.x, file.name).toBeLessThan(130);
      expect(most.y - least.y, file.name).toBeLessThan(110);
      expect(most.z - least.z, file.name).toBeLessThan(120);
    }
  });
});

describe("pieces of a mesh", () => {
  it("are counted", () => {
    const two = { kind: "union", solids: [box([0, 0, 0], [1, 1, 1]), box([3, 0, 0], [4, 1, 1])] } as const;
    expect(piecesIn(meshed(kernel, two))).toBe(2);
    expect(piecesIn(meshed(kernel, box([0, 0, 0], [1, 1, 1])))).toBe(1);
    expect(asSolid(meshed(kernel, two)).kind).toBe("mesh");
  });
});
