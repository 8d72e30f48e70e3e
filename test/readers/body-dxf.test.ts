import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, expect, it } from "vitest";
import type { Flat } from "../../src/drawing/flat/flat.ts";
import { flatsOf } from "../../src/drawing/flat/flats.ts";
import { titled } from "../../src/drawing/flat/titled.ts";
import { dxfText } from "../../src/files/dxf/write-dxf.ts";
import { dimensionOf, type Spec } from "../../src/order/spec.ts";
import { memoryStore } from "../../src/step/store.ts";
import { modelOf } from "../../src/workshop/model.ts";
import { bodySpec } from "../own-body.ts";
import { designs, orderText, resolved, sampleText, specOf } from "../samples.ts";
import { describeWith, ezdxf, python } from "./tool.ts";

type Read = {
  readonly errors: number;
  readonly paths: readonly {
    readonly layer: string;
    readonly closed: boolean;
    readonly valid: boolean;
    readonly area: number;
    readonly bounds: readonly [number, number, number, number];
  }[];
  readonly widths: readonly number[];
  readonly skew: number;
  readonly texts: readonly string[];
  /** The texts right of the body, from the top down. */
  readonly down: readonly string[];
};

const bouts = ["upper", "waist", "lower"] as const;

/** Where the core's room ends along the core's front, worked out once more: its square tail reaches furthest at the core's back. */
function roomEnd(spec: Spec): number {
  const of = (id: string) => dimensionOf(spec, id);
  const slope = (of("core.slope") * Math.PI) / 180;
  const run = of("core.end") - of("core.start");
  return run / Math.cos(slope) + of("core.depth") * Math.tan(slope) + of("body.recess.clearance");
}

/** A body whose head end keeps the blank's own edge. */
function headLeft(): Spec {
  const text = sampleText("designs", "thrift.yaml").replace("  cut: all\n", "  cut: [treble, bass]\n");
  const spec = resolved(orderText("thrift", 4), {}, { designs: { thrift: text } });
  if (!spec.ok) throw new Error(JSON.stringify(spec.problems));
  return spec.value;
}

describeWith(ezdxf, "every body's machine file, opened by ezdxf", () => {
  const specs: Spec[] = [
    ...designs.thrift.map((count) =>
      specOf("thrift", count, "", { hand: count % 2 === 0 ? "left" : "right" }),
    ),
    bodySpec(5, { core: "through", corners: "none" }, "left"),
    bodySpec(6, { core: "recess", corners: "four" }),
    headLeft(),
  ];
  const store = memoryStore();
  let folder = "";
  let read: readonly Read[] = [];

  function written(flat: Flat, hand: "right" | "left", name: string): string {
    const own = {
      order: "T-1",
      part: "body",
      fingerprint: "0",
      hand,
      seenFrom: "core's front",
      overruled: [],
    };
    const path = join(folder, name);
    writeFileSync(path, dxfText(titled(flat, own)));
    return path;
  }

  beforeAll(() => {
    folder = mkdtempSync(join(tmpdir(), "body-"));
    const flats = specs.map((spec) => {
      const file = flatsOf(spec).find(({ name }) => name === "body")!;
      return file.of(modelOf(spec, store), store).value;
    });
    const placesOf = (spec: Spec) =>
      bouts.map((bout) => dimensionOf(spec, "body.start") + dimensionOf(spec, `body.${bout}.at`));
    const jobs = flats.map((flat, i) => [written(flat, specs[i]!.hand, `${i}.dxf`), placesOf(specs[i]!)]);
    // The saboteur: the first one's recess wider by a hundredth at one of its corners.
    const moved = flats[0]!.shapes.map((shape) => {
      if (!shape.layer.startsWith("RECESS-")) return shape;
      const points = shape.path.points.map((point, i) => (i === 0 ? { ...point, y: point.y * 1.01 } : point));
      return { ...shape, path: { ...shape.path, points } };
    });
    jobs.push([written({ ...flats[0]!, shapes: moved }, specs[0]!.hand, "moved.dxf"), placesOf(specs[0]!)]);
    read = python(join(import.meta.dirname, "read_body.py"), JSON.stringify(jobs)) as Read[];
  });
  afterAll(() => rmSync(folder, { recursive: true, force: true }));

  const layerOf = (spec: Spec) => {
    const depth = dimensionOf(spec, "core.depth") - dimensionOf(spec, "body.drop");
    return `RECESS-${depth.toFixed(2).replace(".", "_")}`;
  };

  it("has one closed outer edge, and a recess of its depth unless the core runs through", () => {
    for (const [i, spec] of specs.entries()) {
      const { errors, paths } = read[i]!;
      expect(errors).toBe(0);
      const recess = spec.body!.core === "recess" ? [layerOf(spec)] : [];
      expect(paths.map(({ layer }) => layer).sort()).toEqual(["OUTER-EDGE", ...recess]);
      for (const { closed, valid } of paths) expect([closed, valid]).toEqual([true, true]);
    }
  });

  it("has its length, and its bouts' widths where they are set, the same on both sides", () => {
    for (const [i, spec] of specs.entries()) {
      const of = (id: string) => dimensionOf(spec, `body.${id}`);
      const { bounds } = read[i]!.paths.find(({ layer }) => layer === "OUTER-EDGE")!;
      expect(bounds[0]).toBeCloseTo(of("start"), 3);
      expect(bounds[2]).toBeCloseTo(of("start") + of("length"), 3);
      for (const [k, bout] of bouts.entries())
        expect(Math.abs(read[i]!.widths[k]! - of(`${bout}.width`))).toBeLessThan(0.025);
      expect(Math.abs(read[i]!.skew)).toBeLessThan(0.001);
    }
  });

  it("has room for the core and the clearance a side, from over the head end to behind the core's tail", () => {
    for (const [i, spec] of specs.entries()) {
      const of = (id: string) => dimensionOf(spec, id);
      const wide = of("core.width") + 2 * of("body.recess.clearance");
      const corner = of("neck.corner") + of("body.recess.clearance");
      const cornersLess = (4 - Math.PI) * corner ** 2 * 0.5;
      const recess = read[i]!.paths.find(({ layer }) => layer.startsWith("RECESS-"));
      if (spec.body!.core === "recess") {
        const [left, low, right, high] = recess!.bounds;
        expect(high - low).toBeCloseTo(wide, 3);
        expect(right).toBeCloseTo(roomEnd(spec), 3);
        expect(left).toBeLessThan(of("body.start") - 5);
        expect(Math.abs(recess!.area - (wide * (right - left) - cornersLess))).toBeLessThan(0.1);
      } else {
        // The same body with a recess has the whole outline: the room's area is what is missing.
        const whole = read[designs.thrift.indexOf(5)]!.paths.find(({ layer }) => layer === "OUTER-EDGE")!;
        const less = whole.area - read[i]!.paths[0]!.area;
        const room = wide * (roomEnd(spec) - of("body.start")) - cornersLess;
        expect(Math.abs(less - room)).toBeLessThan(0.1);
      }
    }
  });

  it("says on it how thick the body is, how its front lies and how it is cut", () => {
    for (const [i, spec] of specs.entries()) {
      const of = (id: string) => dimensionOf(spec, `body.${id}`).toFixed(2);
      const said = read[i]!.texts.join("\n");
      expect(said).toContain(`${of("thickness")} thick`);
      expect(said).toContain(`front ${of("drop")} under the core's front`);
      const cut =
        i === specs.length - 1 ? "cut: bass, treble; the blank's own edge stays: head" : "cut all round";
      expect(said).toContain(cut);
      // One under the other in the order in which they are read, for either hand.
      expect(read[i]!.down[0]).toContain("body in one piece");
      expect(read[i]!.down.at(-1)).toContain(cut);
      expect(said).toContain(spec.body!.core === "recess" ? "recess for the core" : "right through");
    }
  });

  it("shows a recess that is wider at one corner by a hundredth of its half", () => {
    const [right, wrong] = [read[0]!, read.at(-1)!].map(
      ({ paths }) => paths.find(({ layer }) => layer.startsWith("RECESS-"))!,
    );
    expect(wrong!.area - right!.area).toBeGreaterThan(10);
    expect(wrong!.bounds[3] - wrong!.bounds[1]).toBeGreaterThan(right!.bounds[3] - right!.bounds[1] + 0.1);
  });
});
