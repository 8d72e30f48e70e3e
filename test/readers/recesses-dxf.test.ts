import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, expect, it } from "vitest";
import { parse } from "yaml";
import { type Flat, turnedOver } from "../../src/drawing/flat/flat.ts";
import { flatsOf } from "../../src/drawing/flat/flats.ts";
import { dxfText } from "../../src/files/dxf/write-dxf.ts";
import { dimensionOf, type Spec } from "../../src/order/spec.ts";
import { memoryStore } from "../../src/step/store.ts";
import { modelOf } from "../../src/workshop/model.ts";
import { sampleText, specOf } from "../samples.ts";
import { describeWith, ezdxf, python } from "./tool.ts";

type Measured = {
  readonly layer: string;
  readonly closed: boolean;
  readonly valid: boolean;
  readonly area: number;
  readonly middle: readonly [number, number];
  readonly bounds: readonly [number, number, number, number];
};
type Read = {
  readonly errors: number;
  readonly shapes: readonly Measured[];
  readonly texts: readonly string[];
};
type Item = { [name: string]: string } & { shaft?: { hole: string; reach: string } };

/** The file of hardware as a plain YAML reader has it. */
const items = new Map<string, Item>(
  parse(sampleText("hardware.yaml")).hardware.map((one: Item) => [one.item, one]),
);
const inLayer = (length: number) => length.toFixed(2).replace(".", "_");

describeWith(ezdxf, "what is sunk from the back, opened by ezdxf", () => {
  const folder = mkdtempSync(join(tmpdir(), "recesses-"));
  const specs: Spec[] = [
    specOf("sedge", 4),
    specOf("sedge", 6, "", { hand: "left" }),
    specOf("mallow", 5),
    specOf("thrift", 4),
    specOf("thrift", 7, "", { hand: "left" }),
    specOf("bulrush", 5),
  ];
  let read = new Map<string, Read>();
  const files = specs.flatMap((spec, k) =>
    flatsOf(spec)
      .filter(({ name }) => /^(neck|body|wing-\w+)-back$|^cover-/.test(name))
      .map((file) => ({ spec, file, key: `${k} ${file.name}` })),
  );

  beforeAll(() => {
    const written = (key: string, flat: Flat) => {
      const path = join(folder, `${key.replace(" ", "-")}.dxf`);
      writeFileSync(path, dxfText(flat));
      return path;
    };
    const jobs = files.map(({ spec, file, key }): [string, string] => {
      const store = memoryStore();
      const { value } = file.of(modelOf(spec, store), store);
      return [key, written(key, value)];
    });
    const store = memoryStore();
    const back = flatsOf(specs[3]!).find(({ name }) => name === "body-back")!;
    const flat = back.of(modelOf(specs[3]!, store), store).value;
    jobs.push(["not mirrored", written("not-mirrored", turnedOver(flat, "y"))]);
    const found = python(
      join(import.meta.dirname, "read_recesses.py"),
      JSON.stringify(jobs.map(([, path]) => path)),
    ) as Read[];
    read = new Map(jobs.map(([key], i) => [key, found[i]!]));
  });
  afterAll(() => rmSync(folder, { recursive: true, force: true }));

  /** What a recess's item, the clearance and the cutter's corners make of it, reckoned from the files themselves. */
  function expected(spec: Spec, recess: Spec["recesses"][number]) {
    const of = (id: string) => dimensionOf(spec, id);
    const item = items.get(recess.holds.kind === "item" ? recess.holds.item.item : "")!;
    const [c, r, e, lip] = [of("recess.clearance"), of("recess.corner"), of("cover.ledge"), of("cover.lip")];
    const size = (name: string) => Number.parseFloat(item[name]!);
    const round = item.diameter !== undefined;
    const [l, w] = round ? [0, 0] : [size("length") + 2 * c, size("width") + 2 * c];
    const radius = round ? size("diameter") / 2 + c : 0;
    const lid = (less: number) =>
      round
        ? Math.PI * (radius + e - less) ** 2
        : (l + 2 * (e - less)) * (w + 2 * (lip - less)) - (4 - Math.PI) * (r - less) ** 2;
    const part = { neck: "core.depth", body: "body.thickness" }[recess.in as "neck"];
    const thickness = of(part ?? `${recess.in.replace("-", ".")}.thickness`);
    const plain = size("depth") + c + of("cover.thickness");
    const reach = item.shaft === undefined ? plain : thickness - Number.parseFloat(item.shaft.reach);
    return {
      area: round ? Math.PI * radius ** 2 : l * w + 4 * r ** 2 * (Math.PI / 2 - 1),
      ledge: lid(0),
      cover: lid(of("cover.clearance")),
      depth: Math.max(plain, reach),
    };
  }

  /** Where a recess's middle is seen from the back: the treble side is down, but for a left-hand order. */
  function middleOf(spec: Spec, { in: part, at: [along, across] }: Spec["recesses"][number]) {
    const seen = spec.hand === "right" ? -1 : 1;
    const x = part === "body" ? along + dimensionOf(spec, "body.start") : along;
    return [x, seen * (part === "wing-bass" ? -across : across)] as const;
  }

  it("has each recess with its item's size and the clearance, at its place seen from the back, and its depth for a layer", () => {
    for (const [k, spec] of specs.entries())
      for (const recess of spec.recesses) {
        const { errors, shapes } = read.get(`${k} ${recess.in}-back`)!;
        expect(errors).toBe(0);
        const { area, ledge, depth } = expected(spec, recess);
        const [x, y] = middleOf(spec, recess);
        const there = shapes.filter(({ middle, layer }) => {
          return layer.startsWith("RECESS-") && Math.hypot(middle[0] - x, middle[1] - y) < 1e-3;
        });
        expect(
          there.map(({ layer }) => layer),
          recess.id,
        ).toEqual([`RECESS-${inLayer(dimensionOf(spec, "cover.thickness"))}`, `RECESS-${inLayer(depth)}`]);
        expect(Math.abs(there[0]!.area - ledge), recess.id).toBeLessThan(0.05);
        expect(Math.abs(there[1]!.area - area), recess.id).toBeLessThan(0.05);
        for (const { closed, valid } of there) expect([closed, valid]).toEqual([true, true]);
      }
  });

  it("has every cover smaller than its ledge by the clearance, with a hole over each pilot", () => {
    for (const [k, spec] of specs.entries())
      for (const recess of spec.recesses) {
        const { errors, shapes, texts } = read.get(`${k} cover-${recess.id}`)!;
        expect(errors).toBe(0);
        const [outer] = shapes.filter(({ layer }) => layer === "OUTER-EDGE");
        expect(Math.abs(outer!.area - expected(spec, recess).cover), recess.id).toBeLessThan(0.05);
        const holes = shapes.filter(
          ({ layer }) => layer === `BORE-${inLayer(dimensionOf(spec, "cover.screw"))}`,
        );
        const pilots = read
          .get(`${k} ${recess.in}-back`)!
          .shapes.filter(({ layer }) => layer === `BORE-${inLayer(dimensionOf(spec, "cover.pilot"))}`);
        expect(holes).toHaveLength(2);
        for (const { middle } of holes)
          expect(
            Math.min(
              ...pilots.map((pilot) => Math.hypot(pilot.middle[0] - middle[0], pilot.middle[1] - middle[1])),
            ),
          ).toBeLessThan(1e-3);
        expect(texts.join("\n")).toContain(`${dimensionOf(spec, "cover.thickness").toFixed(2)} thick`);
      }
  });

  it("lies inside the part's outline, and says what each is and how deep it goes", () => {
    for (const { file, key } of files.filter(({ file: { name } }) => name.endsWith("-back"))) {
      const { shapes, texts } = read.get(key)!;
      const [part] = shapes.filter(({ layer }) => layer === "PART");
      const [left, low, right, high] = part!.bounds;
      for (const { bounds, layer } of shapes) {
        expect(Math.min(bounds[0] - left, bounds[1] - low), `${key} ${layer}`).toBeGreaterThan(-1e-6);
        expect(Math.min(right - bounds[2], high - bounds[3]), `${key} ${layer}`).toBeGreaterThan(-1e-6);
      }
      expect(file.seenFrom).toMatch(/back$/);
      expect(texts.join("\n")).toContain("seen from its back");
    }
  });

  it("shows a body whose back was drawn as it is seen from the front", () => {
    const { shapes } = read.get("not mirrored")!;
    const battery = specs[3]!.recesses.find(({ id }) => id === "battery")!;
    const [x, y] = middleOf(specs[3]!, battery);
    const near = shapes.filter(({ middle }) => Math.hypot(middle[0] - x, middle[1] - y) < 1e-3);
    expect(near).toEqual([]);
  });
});
