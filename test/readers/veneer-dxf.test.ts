import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, expect, it } from "vitest";
import type { Flat } from "../../src/drawing/flat/flat.ts";
import { flatsOf } from "../../src/drawing/flat/flats.ts";
import { titled } from "../../src/drawing/flat/titled.ts";
import { dxfText } from "../../src/files/dxf/write-dxf.ts";
import { dimensionsOf } from "../../src/report/dimensions.ts";
import { memoryStore } from "../../src/step/store.ts";
import { modelOf } from "../../src/workshop/model.ts";
import { orderText, resolved, sampleText, specOf } from "../samples.ts";
import { describeWith, ezdxf, python } from "./tool.ts";

type Read = {
  readonly errors: number;
  readonly areas: readonly number[];
  readonly valid: boolean;
  readonly least: number;
  readonly most: number;
  readonly off: number;
  readonly grains: readonly { readonly angle: number; readonly inside: number }[];
};

describeWith(ezdxf, "veneers, opened by ezdxf and measured by shapely", () => {
  const store = memoryStore();
  const specs = [specOf("thrift", 5), specOf("thrift", 4, "set:\n  veneer.margin: 9 mm\n", { hand: "left" })];
  let folder = "";
  let read: readonly Read[] = [];

  beforeAll(() => {
    folder = mkdtempSync(join(tmpdir(), "veneer-"));
    const jobs = specs.flatMap((spec, i) => {
      const model = modelOf(spec, store);
      const body = flatsOf(spec).find(({ name }) => name === "body")!;
      const outline = written(body.of(model, store).value, `${i}-body.dxf`);
      return ["front", "back"].map((face) => {
        const { value } = flatsOf(spec)
          .find(({ name }) => name === `veneer-${face}`)!
          .of(model, store);
        // The body's own drawing is seen from its front, of either hand.
        return [written(value, `${i}-${face}.dxf`), outline, 10, face === "back"];
      });
    });
    // The saboteur: a back veneer one of whose corners stands half a millimetre further out.
    const [, back] = jobs;
    const flat = flatsOf(specs[0]!)
      .find(({ name }) => name === "veneer-back")!
      .of(modelOf(specs[0]!, store), store).value;
    const moved = flat.shapes.map((shape, k) => {
      if (k > 0) return shape;
      const points = shape.path.points.map((point, n) =>
        n === 0 ? { ...point, x: point.x - 0.5, y: point.y + 0.5 } : point,
      );
      return { ...shape, path: { ...shape.path, points } };
    });
    jobs.push([written({ ...flat, shapes: moved }, "moved.dxf"), back![1]!, 10, true]);
    read = python(join(import.meta.dirname, "read_veneer.py"), JSON.stringify(jobs)) as Read[];
  });
  afterAll(() => rmSync(folder, { recursive: true, force: true }));

  function written(flat: Flat, name: string): string {
    const own = {
      order: "T-1",
      part: "body",
      fingerprint: "0",
      hand: "right" as const,
      seenFrom: "front",
      overruled: [],
    };
    const path = join(folder, name);
    writeFileSync(path, dxfText(titled(flat, own)));
    return path;
  }

  it("stand their margin outside the body's outline all round, closed and clean", () => {
    for (const [i, margin] of [6, 6, 9, 9].entries()) {
      const { errors, valid, least, most, off } = read[i]!;
      expect([errors, valid]).toEqual([0, true]);
      expect(least).toBeGreaterThan(margin - 0.01);
      expect(most).toBeLessThan(margin + 0.01);
      expect(off).toBeLessThan(5);
    }
  });

  it("are two leaves of one area whose grain leans either way, or one whose grain runs along", () => {
    for (const i of [0, 2]) {
      const { areas, grains } = read[i]!;
      expect(areas).toHaveLength(2);
      expect(areas[0]).toBeCloseTo(areas[1]!, 4);
      expect(grains.map(({ inside }) => inside)).toEqual([1, 1]);
      const angles = grains.map(({ angle }) => ((angle + 270) % 180) - 90).sort((a, b) => a - b);
      expect(angles[0]).toBeCloseTo(-8, 3);
      expect(angles[1]).toBeCloseTo(8, 3);
    }
    for (const i of [1, 3]) {
      expect(read[i]!.areas).toHaveLength(1);
      expect(Math.abs(Math.sin((read[i]!.grains[0]!.angle * Math.PI) / 180))).toBeLessThan(1e-6);
    }
  });

  it("show a corner that stands half a millimetre off", () => {
    const { least, most } = read.at(-1)!;
    expect(Math.max(most - 6, 6 - least)).toBeGreaterThan(0.2);
  });

  it("leave the body as thick as it is set, and say what its wood is planed to", () => {
    const under = dimensionsOf(specs[0]!).find(({ id }) => id === "body.under-veneer")!;
    expect(under.of(modelOf(specs[0]!, store))).toBeCloseTo(24 - 2 * 0.6, 9);
  });

  it("are told in the design where part, pair, face or name is wrong", () => {
    const text = sampleText("designs", "thrift.yaml");
    const wrong = (from: string, to: string) => {
      expect(text).toContain(from);
      const spec = resolved(orderText("thrift", 5), {}, { designs: { thrift: text.replace(from, to) } });
      return spec.ok ? [] : spec.problems;
    };
    expect(wrong("{ id: back, on: body", "{ id: back, on: wing-bass")[0]).toMatchObject({
      name: "veneer.back",
    });
    expect(wrong("{ id: back, on: body, face: back", "{ id: back, on: body, face: front")[0]).toMatchObject({
      found: "a second veneer on the front of body",
    });
    expect(wrong("{ id: back, on: body", "{ id: front, on: body")[0]).toMatchObject({ code: "id" });
    expect(wrong("pair: none", "pair: both")[0]).toMatchObject({ allowed: "mirrored, none" });
  });
});
