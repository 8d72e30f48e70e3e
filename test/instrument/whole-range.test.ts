import { describe, expect, it } from "vitest";
import { flatsOf } from "../../src/drawing/flat/flats.ts";
import { expectedOf } from "../../src/files/dxf/expected.ts";
import { contradictions } from "../../src/instrument/contradictions.ts";
import { instrument } from "../../src/instrument/instrument.ts";
import { catalogue } from "../../src/order/catalogue.ts";
import { quantityText } from "../../src/order/quantity.ts";
import type { Spec } from "../../src/order/spec.ts";
import { dimensionsOf } from "../../src/report/dimensions.ts";
import { memoryStore, type Store } from "../../src/step/store.ts";
import { modelOf } from "../../src/workshop/model.ts";
import { designs, everyCount, frettedSpec, specOf } from "../samples.ts";
import { crossings, inside, polygonOf } from "../simple-ring.ts";

/** What must hold of any instrument that can be built. */
function sound(spec: Spec, store: Store, seen = new Set<string>()): void {
  const model = modelOf(spec, store);
  const { instrument: made } = model;
  for (const { id, of } of dimensionsOf(spec)) expect(Number.isFinite(of(model)), id).toBe(true);
  expect(made.layout.bridgeGap).toBeGreaterThan(0);
  expect(made.taper.end).toBeGreaterThanOrEqual(made.taper.nut);
  expect(Math.max(...made.heights.bridge)).toBeLessThan(made.crown.top + 2);
  for (const file of flatsOf(spec)) {
    const { key, value: flat } = file.of(model, store);
    // What came out as it was before has been looked at before.
    if (seen.has(key)) continue;
    seen.add(key);
    for (const { layer, closed, area } of expectedOf(flat).paths)
      if (closed) expect(area, layer).toBeGreaterThan(0);
    const rings = flat.shapes
      .filter(({ path }) => path.closed)
      .map(({ layer, path }) => ({ layer, ring: polygonOf(path) }));
    for (const { layer, ring } of rings) expect(crossings(ring), `${file.name} ${layer}`).toBe(0);
    // A template may be of several plates; what is sawn is bored in its blank's waste.
    const around = rings.some(({ layer }) => layer === "OUTER-EDGE")
      ? "OUTER-EDGE"
      : file.name.endsWith("-saw")
        ? "SCRIBE"
        : "PART";
    const bodies = rings.filter(({ layer }) => layer === around).map(({ ring }) => ring);
    for (const { layer, ring } of rings) {
      if (!layer.startsWith("BORE-")) continue;
      const held = bodies.some((body) => ring.every((place) => inside(body, place)));
      expect(held, `${file.name} ${layer}`).toBe(true);
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
      const store = memoryStore();
      expect(contradictions(spec, instrument(spec, store))).toEqual([]);
      sound(spec, store);
    }
  });
});

/** The counts that a dimension's end is tried at: by day one of the design's own, in turn; by night all of them. */
function triedAt<Value>(all: readonly Value[], turn: number): readonly Value[] {
  return process.env.NIGHTLY === undefined ? [all[turn % all.length]!] : all;
}

describe("every dimension at each end of its range, one at a time", () => {
  const kinds = [
    ...Object.entries(designs).map(([design, counts]) => {
      return { design, counts, order: (count: number, more: string) => specOf(design, count, more) };
    }),
    { design: "thrift with frets", counts: designs.thrift, order: frettedSpec },
  ].map((kind, i) => ({ ...kind, half: i % 2 }));
  it.each(kinds)("$design builds, or names the dimension to move, in nine of ten", (kind) => {
    const { counts, order, half } = kind;
    const refused: string[] = [];
    const usual = counts.map((count) => ({ count, store: memoryStore(), seen: new Set<string>() }));
    const all = Object.values(order(counts[0], "").values).flatMap(({ id, kind }) =>
      (["least", "most"] as const).map((end) => ({ id, kind, end })),
    );
    // By day one end of every second dimension, least and most in turn, and the other half of them of the next design; by night both ends of all.
    const ends = all.filter((_, i) => {
      const dimension = Math.floor(i / 2);
      return process.env.NIGHTLY !== undefined || (dimension % 2 === half && i % 2 === (dimension >> 1) % 2);
    });
    let tried = 0;
    for (const [turn, { id, kind, end }] of ends.entries()) {
      // One store a count: what an end leaves as it was is answered and not worked out again.
      for (const { count, store, seen } of triedAt(usual, turn)) {
        const at = order(count, "").values[id]![end];
        const spec = order(count, `set:\n  ${id}: ${quantityText(at, kind)}\n`);
        const problems = contradictions(spec, instrument(spec, store));
        tried++;
        if (problems.length === 0) sound(spec, store, seen);
        else refused.push(`${count} ${id} ${at}: ${problems[0]!.name}: ${problems[0]!.hint}`);
        for (const { name } of problems)
          expect(["frets", ...catalogue.map((entry) => entry.id)]).toContain(name);
      }
    }
    console.log(`${refused.length} of ${tried} ends don't build:\n${refused.join("\n")}`);
    expect(all.length).toBeGreaterThan(200);
    expect(ends.length).toBeGreaterThanOrEqual(Math.floor(all.length / 4));
    expect(refused.length, refused.join("\n")).toBeLessThanOrEqual(tried / 10);
  });
});
