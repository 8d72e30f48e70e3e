import { describe, expect, it } from "vitest";
import { flatFiles } from "../../src/drawing/flat/flats.ts";
import { expectedOf } from "../../src/files/dxf/expected.ts";
import { contradictions } from "../../src/instrument/contradictions.ts";
import { instrument } from "../../src/instrument/instrument.ts";
import { catalogue } from "../../src/order/catalogue.ts";
import type { Spec } from "../../src/order/spec.ts";
import { dimensionsOf } from "../../src/report/dimensions.ts";
import { memoryStore } from "../../src/step/store.ts";
import { modelOf } from "../../src/workshop/model.ts";
import { designs, everyCount, specOf } from "../samples.ts";
import { crossings, inside, polygonOf } from "../simple-ring.ts";

/** What must hold of any instrument that can be built. */
function sound(spec: Spec): void {
  const store = memoryStore();
  const model = modelOf(spec, store);
  const { instrument: made } = model;
  for (const { id, of } of dimensionsOf(spec)) expect(Number.isFinite(of(model)), id).toBe(true);
  expect(made.layout.bridgeGap).toBeGreaterThan(0);
  expect(made.taper.end).toBeGreaterThanOrEqual(made.taper.nut);
  expect(Math.max(...made.heights.bridge)).toBeLessThan(made.crown.top + 2);
  for (const file of flatFiles) {
    const flat = file.of(model, store).value;
    for (const { layer, closed, area } of expectedOf(flat).paths)
      if (closed) expect(area, layer).toBeGreaterThan(0);
    const rings = flat.shapes
      .filter(({ path }) => path.closed)
      .map(({ layer, path }) => ({ layer, ring: polygonOf(path) }));
    for (const { layer, ring } of rings) expect(crossings(ring), `${file.name} ${layer}`).toBe(0);
    const body = (rings.find(({ layer }) => layer === "OUTER-EDGE") ??
      rings.find(({ layer }) => layer === "PART"))!;
    for (const { layer, ring } of rings) {
      if (layer.startsWith("BORE-"))
        for (const place of ring) expect(inside(body.ring, place), layer).toBe(true);
    }
  }
  const rounded = (made.bridge.kind === "ok" ? made.bridge.finished.points : []).filter(
    ({ bulge }) => bulge < -0.5,
  );
  expect(rounded, "a round notch for every string").toHaveLength(spec.count);
}

it("tells a ring that crosses itself, and a bore that leaves it", () => {
  const corner = (x: number, y: number) => ({ x, y, bulge: 0 });
  const bow = { closed: true, points: [corner(0, 0), corner(10, 10), corner(10, 0), corner(0, 10)] };
  expect(crossings(polygonOf(bow))).toBe(1);
  const square = polygonOf({
    closed: true,
    points: [corner(0, 0), corner(10, 0), corner(10, 10), corner(0, 10)],
  });
  expect(crossings(square)).toBe(0);
  expect([inside(square, [5, 5]), inside(square, [11, 5])]).toEqual([true, false]);
});

describe("every design at every count and hand", () => {
  it.each(everyCount)("$design with $count strings", ({ design, count }) => {
    for (const hand of ["right", "left"]) {
      const spec = specOf(design, count, "", { hand });
      expect(contradictions(spec, instrument(spec, memoryStore()))).toEqual([]);
      sound(spec);
    }
  });
});

describe("every dimension at each end of its range, one at a time", () => {
  const named: string[] = [];
  let ends = 0;
  it.each(Object.keys(designs))("%s builds, or names the dimension to move", (design) => {
    for (const count of designs[design as keyof typeof designs]) {
      const nominal = specOf(design, count);
      for (const { id } of catalogue) {
        const { least, most, kind } = nominal.values[id]!;
        for (const end of [least, most]) {
          ends++;
          const spec = specOf(design, count, `set:\n  ${id}: ${end} ${kind === "angle" ? "deg" : "mm"}\n`);
          const problems = contradictions(spec, instrument(spec, memoryStore()));
          if (problems.length === 0) sound(spec);
          else named.push(`${design} ${count} ${id} ${end}: ${problems[0]!.name}: ${problems[0]!.hint}`);
          for (const { name } of problems) expect(catalogue.map((entry) => entry.id)).toContain(name);
        }
      }
    }
  });

  it("at least nine ends in ten build", () => {
    expect(ends).toBeGreaterThan(600);
    expect(named.length, named.join("\n")).toBeLessThanOrEqual(ends / 10);
  });
});

describe("a left-hand instrument", () => {
  it.each(everyCount)(
    "$design with $count strings keeps every number, and its outlines are mirrored",
    ({ design, count }) => {
      const [right, left] = ["right", "left"].map((hand) =>
        modelOf(specOf(design, count, "", { hand }), memoryStore()),
      );
      for (const { id, of } of dimensionsOf(right!.spec)) expect(of(left!), id).toBe(of(right!));
      for (const file of flatFiles) {
        const [a, b] = [right!, left!].map((model) => file.of(model, memoryStore()).value);
        if (file.name === "neck-side") {
          expect(b).toEqual(a);
          continue;
        }
        expect(b!.shapes).not.toEqual(a!.shapes);
        const [before, after] = [expectedOf(a!).paths, expectedOf(b!).paths];
        for (const [i, { area, length, extents }] of before.entries()) {
          expect(after[i]!.area).toBeCloseTo(area, 9);
          expect(after[i]!.length).toBeCloseTo(length, 9);
          const [x1, y1, x2, y2] = extents;
          const mirrored = ["fingerboard", "neck-plan", "head-face"].includes(file.name)
            ? [x1, -y2, x2, -y1]
            : [-x2, y1, -x1, y2];
          for (const [k, value] of mirrored.entries()) expect(after[i]!.extents[k]).toBeCloseTo(value, 9);
        }
        expect(b!.notes.map(({ text }) => text)).toEqual(a!.notes.map(({ text }) => text));
      }
    },
  );
});
