import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, expect, it } from "vitest";
import type { Flat } from "../../src/drawing/flat/flat.ts";
import { flatFiles } from "../../src/drawing/flat/flats.ts";
import { titled } from "../../src/drawing/flat/titled.ts";
import { dxfText } from "../../src/files/dxf/write-dxf.ts";
import { dimensionOf, type Spec } from "../../src/order/spec.ts";
import { memoryStore } from "../../src/step/store.ts";
import { type Model, modelOf } from "../../src/workshop/model.ts";
import { everyCount, specOf } from "../samples.ts";
import { describeWith, ezdxf, python } from "./tool.ts";

type Place = { readonly x: number; readonly y: number };
type Read = {
  readonly errors: number;
  readonly outer: readonly { closed: boolean; valid: boolean; area: number; bounds: readonly number[] }[];
  readonly bores: readonly (Place & { readonly layer: string; readonly wide: readonly number[] })[];
  readonly texts: readonly { readonly text: string; readonly layer: string }[];
  readonly away: readonly number[];
};

/**
 * Where the strings leave the plate and where their holes are, worked out once more from heights and places at the bridge: each
 * exit as far from its contact as the afterlength, at the tailpiece's height over the sloping front, turned by the slant.
 */
function wanted({ spec, instrument: made }: Model): { readonly exits: Place[]; readonly holes: Place[] } {
  const of = (id: string) => dimensionOf(spec, id);
  const slope = (of("core.slope") * Math.PI) / 180;
  const d = spec.strings.map(({ diameter }) => diameter);
  const between = d.reduce((sum, one) => sum + one, 0) - (d[0]! + d.at(-1)!) / 2;
  const gap = (of("tailpiece.spread") - between) / (d.length - 1);
  const side = spec.hand === "left" ? -1 : 1;
  const exits: Place[] = [];
  const holes: Place[] = [];
  for (const i of d.keys()) {
    const y =
      of("tailpiece.spread") / 2 -
      d.slice(1, i + 1).reduce((sum, one, k) => sum + gap + (one + d[k]!) / 2, 0);
    const [along, up] = [of("string.length") - of("core.start"), made.heights.bridge[i]! + of("core.drop")];
    const fall = along * Math.sin(slope) + up * Math.cos(slope) - of("tailpiece.height");
    const run =
      Math.sqrt(of("afterlength") ** 2 - fall ** 2) - y * Math.tan((of("tailpiece.slant") * Math.PI) / 180);
    const x = along * Math.cos(slope) - up * Math.sin(slope) + run;
    const aside = y - made.layout.bridge[i]!;
    const share = of("tailpiece.hole.at") / Math.hypot(run, aside);
    exits.push({ x, y: side * y });
    holes.push({ x: x + run * share, y: side * (y + aside * share) });
  }
  return { exits, holes };
}

/** A hole's middle off its wanted place, mm. */
function off(read: Read, { holes }: ReturnType<typeof wanted>, layer: string): number[] {
  const bores = read.bores.filter((bore) => bore.layer === layer);
  return holes.map(({ x, y }) => Math.min(...bores.map((bore) => Math.hypot(bore.x - x, bore.y - y))));
}

describeWith(ezdxf, "every tailpiece's machine file, opened by ezdxf", () => {
  const file = flatFiles.find(({ name }) => name === "tailpiece")!;
  const specs: Spec[] = everyCount.flatMap(({ design, count }, i) => [
    specOf(design, count, "", { hand: i % 2 === 0 ? "left" : "right" }),
    specOf(design, count, "set:\n  tailpiece.slant: 12 deg\n", { hand: i % 2 === 0 ? "right" : "left" }),
  ]);
  const models = specs.map((spec) => modelOf(spec, memoryStore()));
  let folder = "";
  let read: readonly Read[] = [];

  function written(flat: Flat, hand: "right" | "left", name: string): string {
    const title = {
      order: "T-1",
      part: "tailpiece",
      fingerprint: "0",
      hand,
      seenFrom: "front",
      overruled: [],
    };
    const path = join(folder, name);
    writeFileSync(path, dxfText(titled(flat, title)));
    return path;
  }

  beforeAll(() => {
    folder = mkdtempSync(join(tmpdir(), "tailpiece-"));
    const jobs = models.map((model, i) => {
      const flat = file.of(model, memoryStore()).value;
      return [written(flat, model.spec.hand, `${i}.dxf`), wanted(model).exits.map(({ x, y }) => [x, y])];
    });
    // The saboteur: the first one with a string's hole moved by a hundredth.
    const flat = file.of(models[0]!, memoryStore()).value;
    const first = flat.shapes.findIndex(({ layer }) => layer.startsWith("BORE-"));
    const moved = flat.shapes.map((shape, i) => {
      if (i !== first) return shape;
      const points = shape.path.points.map((point) => ({ ...point, x: point.x + 0.01 }));
      return { ...shape, path: { ...shape.path, points } };
    });
    jobs.push([written({ ...flat, shapes: moved }, models[0]!.spec.hand, "moved.dxf"), []]);
    read = python(join(import.meta.dirname, "read_tailpiece.py"), JSON.stringify(jobs)) as Read[];
  });
  afterAll(() => rmSync(folder, { recursive: true, force: true }));

  const layerOf = (spec: Spec) => `BORE-${dimensionOf(spec, "tailpiece.hole").toFixed(2).replace(".", "_")}`;

  it("has a hole of its size for every string within 0.001 of its place, and the posts' beside", () => {
    for (const [i, { spec }] of models.entries()) {
      const { errors, bores } = read[i]!;
      expect(errors).toBe(0);
      const layer = layerOf(spec);
      expect(bores.filter((bore) => bore.layer === layer)).toHaveLength(spec.count);
      expect(bores).toHaveLength(spec.count + spec.tailpieceFace.holes.length);
      for (const away of off(read[i]!, wanted(models[i]!), layer)) expect(away).toBeLessThan(0.001);
      for (const { wide, layer: name } of bores)
        for (const size of wide)
          expect(Math.abs(size - Number(name.slice(5).replace("_", ".")))).toBeLessThan(0.001);
    }
  });

  it("has one closed outer edge without crossings, of its width, through every string's exit", () => {
    for (const [i, { spec }] of models.entries()) {
      const { outer, away } = read[i]!;
      expect(outer).toHaveLength(1);
      expect(outer[0]).toMatchObject({ closed: true, valid: true });
      const [, low, , high] = outer[0]!.bounds as [number, number, number, number];
      expect(high - low).toBeCloseTo(dimensionOf(spec, "tailpiece.width"), 4);
      expect(away).toHaveLength(spec.count);
      for (const distance of away) expect(distance).toBeLessThan(0.001);
    }
  });

  it("names every string on the note layer", () => {
    for (const [i, { spec }] of models.entries()) {
      for (const { name } of spec.strings) {
        const note = read[i]!.texts.find(({ text }) => text.startsWith(`${name} GROOVE`));
        expect(note?.layer).toBe("NOTE");
      }
    }
  });

  it("shows a hole that was moved by a hundredth", () => {
    const most = Math.max(...off(read.at(-1)!, wanted(models[0]!), layerOf(models[0]!.spec)));
    expect(most).toBeCloseTo(0.01, 4);
  });
});
