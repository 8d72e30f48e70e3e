import { describe, expect, it } from "vitest";
import { flatsOf } from "../../src/drawing/flat/flats.ts";
import { extentsOf } from "../../src/geometry/measure.ts";
import type { Path } from "../../src/geometry/path.ts";
import { madeInlays } from "../../src/instrument/fingerboard/inlays.ts";
import { dimensionOf, type Spec } from "../../src/order/spec.ts";
import { dimensionsOf } from "../../src/report/dimensions.ts";
import { memoryStore } from "../../src/step/store.ts";
import { modelOf } from "../../src/workshop/model.ts";
import { designs, specOf } from "../samples.ts";

const store = memoryStore();

/** The fingerprints of an order's flat files. */
function prints(spec: Spec): ReadonlyMap<string, string> {
  const model = modelOf(spec, store);
  return new Map(flatsOf(spec).map((file) => [file.name, file.of(model, store).key]));
}

function changed(design: string, id: string, value: string): string[] {
  const [before, after] = [prints(specOf(design, 5)), prints(specOf(design, 5, `set:\n  ${id}: ${value}\n`))];
  return [...before.keys()].filter((name) => before.get(name) !== after.get(name)).sort();
}

const reported = (spec: Spec, id: string) =>
  dimensionsOf(spec)
    .find((one) => one.id === id)!
    .of(modelOf(spec, store));

describe("fits", () => {
  it("stand as the trade notes give them, and each moves something in every design that declares it", () => {
    const given = { "fit.recess": 0.15, "fit.pin": 0.1, "fit.inlay": 0.05 };
    for (const design of Object.keys(designs)) {
      const spec = specOf(design, 5);
      for (const [id, value] of Object.entries(given)) {
        if (spec.values[id] === undefined) continue;
        expect(dimensionOf(spec, id)).toBe(value);
        const other = value === 0.1 ? "0.12 mm" : "0.1 mm";
        expect(changed(design, id, other).length, `${design} ${id}`).toBeGreaterThan(0);
      }
    }
    expect(specOf("thrift", 5).values["fit.pin"]).toBeUndefined();
    expect(specOf("mallow", 5).values["fit.inlay"]).toBeUndefined();
  });

  it("of pins widen the wings' holes, in wing and core, and nothing else that is cut", () => {
    const files = changed("sedge", "fit.pin", "0.15 mm");
    expect(files).toEqual(["joint-bass", "joint-treble"]);
    const wide = specOf("sedge", 5, "set:\n  fit.pin: 0.15 mm\n");
    for (const [spec, hole] of [
      [specOf("sedge", 5), 6.2],
      [wide, 6.3],
    ] as const) {
      expect(reported(spec, "wing.bass.pin.hole")).toBeCloseTo(hole, 9);
      const { instrument } = modelOf(spec, store);
      expect(instrument.wings!.treble.solidInput.pin.diameter).toBeCloseTo(hole, 9);
      for (const { hole: own } of instrument.wingPinHoles) expect(own.diameter).toBeCloseTo(hole, 9);
      const flat = flatsOf(spec).find(({ name }) => name === "joint-bass")!;
      const { shapes, notes } = flat.of(modelOf(spec, store), store).value;
      expect(
        shapes.filter(({ layer }) => layer === `BORE-${hole.toFixed(2).replace(".", "_")}`),
      ).toHaveLength(2);
      expect(notes.map(({ text }) => text).join()).toContain(`pins 6.00 in holes ${hole.toFixed(2)}`);
    }
  });

  it("of recesses widen the core's room and the items' by twice as much, and leave the body's edge alone", () => {
    const [usual, wide] = [specOf("thrift", 5), specOf("thrift", 5, "set:\n  fit.recess: 0.2 mm\n")];
    expect(reported(wide, "body.recess.width") - reported(usual, "body.recess.width")).toBeCloseTo(0.1, 9);
    expect(reported(wide, "body.area")).toBe(reported(usual, "body.area"));
    const [before, after] = [usual, wide].map((spec) => {
      const pocket = modelOf(spec, store).instrument.sunken.body!.pockets.find(({ id }) => id === "battery")!;
      const { minX, maxX } = extentsOf([pocket.path])!;
      return maxX - minX;
    });
    expect(after! - before!).toBeCloseTo(0.1, 6);
  });

  it("of inlays make the inlay smaller by twice as much, in a recess that stays", () => {
    const [usual, wide] = [specOf("sedge", 5), specOf("sedge", 5, "set:\n  fit.inlay: 0.1 mm\n")].map(
      (spec) => madeInlays(modelOf(spec, store).instrument)[0]!,
    );
    const across = (path: Path) => {
      const { minY, maxY } = extentsOf([path])!;
      return maxY - minY;
    };
    expect(across(wide!.recess)).toBe(across(usual!.recess));
    expect(across(usual!.insert) - across(wide!.insert)).toBeCloseTo(0.1, 3);
  });
});
