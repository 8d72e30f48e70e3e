import { describe, expect, it } from "vitest";
import { flatsOf } from "../../src/drawing/flat/flats.ts";
import { extentsOf } from "../../src/geometry/measure.ts";
import { nearestPlace } from "../../src/geometry/path-measures/nearest-place.ts";
import { whereabouts } from "../../src/geometry/path-measures/winding.ts";
import { intoCore } from "../../src/instrument/core/frame.ts";
import { fromCore } from "../../src/instrument/core/from-core.ts";
import { dimensionOf, type Spec } from "../../src/order/spec.ts";
import { dimensionsOf } from "../../src/report/dimensions.ts";
import { memoryStore } from "../../src/step/store.ts";
import { modelOf } from "../../src/workshop/model.ts";
import { everyCount, specOf } from "../samples.ts";

function made(spec: Spec) {
  const store = memoryStore();
  const model = modelOf(spec, store);
  const flat = (name: string) =>
    flatsOf(spec)
      .find((file) => file.name === name)!
      .of(model, store).value;
  const number = (id: string) =>
    dimensionsOf(spec)
      .find((dimension) => dimension.id === id)!
      .of(model);
  return { ...model, of: (id: string) => dimensionOf(spec, id), flat, number };
}

const radians = (degrees: number) => (degrees * Math.PI) / 180;

describe.each(everyCount)("the bridge of $design with $count strings on its core", ({ design, count }) => {
  const spec = specOf(design, count);
  const { instrument, of, flat, number } = made(spec);
  const place = flat("bridge-place");
  const on = (layer: RegExp) => place.shapes.filter((shape) => layer.test(shape.layer));

  it("brings the middle of its crown's thickness to the string length, from its foot's middle as the trade notes reckon", () => {
    const height = number("bridge.height");
    const behind =
      (of("bridge.foot.thickness") - of("bridge.top.thickness")) / 2 +
      height * Math.tan(radians(of("bridge.tilt")));
    const contact = fromCore(instrument.core, { x: number("bridge.foot.x") + behind, z: height });
    expect(contact.x).toBeCloseTo(of("string.length"), 5);
    expect(contact.z).toBeCloseTo(number("bridge.top"), 5);
    const back = intoCore(instrument.core, contact);
    expect(back.z).toBeCloseTo(height, 9);
  });

  it("scribes its centreline, the middle of its foot, and each foot as wide as its outline stands and as thick as set", () => {
    const lines = on(/^SCRIBE$/);
    const feet = lines.filter(({ path }) => path.closed).map(({ path }) => extentsOf([path])!);
    const middle = number("bridge.foot.x");
    expect(feet.length).toBe(2);
    for (const { minX, maxX } of feet) {
      expect(maxX - minX).toBeCloseTo(of("bridge.foot.thickness"), 6);
      expect((minX + maxX) / 2).toBeCloseTo(middle, 5);
    }
    const wide = Math.max(...feet.map(({ maxY }) => maxY)) - Math.min(...feet.map(({ minY }) => minY));
    expect(wide).toBeCloseTo(of("bridge.foot.width"), 5);
    // Between the feet is the opening.
    expect(feet[1]!.minY - feet[0]!.maxY).toBeCloseTo(0.44 * of("bridge.foot.width"), 5);
    const open = lines.filter(({ path }) => !path.closed).map(({ path }) => path.points);
    expect(open.some(([a, b]) => a!.y === 0 && b!.y === 0)).toBe(true);
    expect(open.some(([a, b]) => a!.x === b!.x && Math.abs(a!.x - middle) < 1e-5)).toBe(true);
  });

  it("bores or routs what its kind of foot asks for, within the core", () => {
    const kind = spec.bridgeFoot.kind;
    const bores = on(/^BORE-/);
    const recesses = on(/^RECESS-/);
    expect([bores.length, recesses.length]).toEqual(
      { standing: [0, 0], saddle: [2, 0], cradle: [0, 1] }[kind],
    );
    const core = on(/^PART$/)[0]!.path;
    for (const { path } of [...bores, ...recesses])
      for (const { x, y } of path.points) {
        const nearest = nearestPlace(core, { x, y });
        expect(whereabouts(core, { x, y })).toBe("inside");
        expect(nearest.kind === "ok" && nearest.distance).toBeGreaterThan(1.5);
      }
    const texts = place.notes.map(({ text }) => text).join("\n");
    if (kind === "saddle") {
      expect(bores.map(({ layer }) => layer)).toEqual(["BORE-2_50", "BORE-2_50"]);
      expect(texts.match(/DEEP 14\.00/g)).toHaveLength(2);
    }
    if (kind === "cradle") {
      expect(recesses[0]!.layer).toBe("RECESS-3_00");
      const { minX, maxX, minY, maxY } = extentsOf([recesses[0]!.path])!;
      expect([maxX - minX, maxY - minY].map((side) => Math.round(side * 1e5) / 1e5)).toEqual([
        of("cradle.length"),
        of("bridge.foot.width"),
      ]);
      expect((minX + maxX) / 2).toBeCloseTo(number("bridge.foot.x"), 5);
    }
  });

  it("has a side whose flat face leans by the tilt and whose thickness runs from foot to crown", () => {
    const [side] = flat("bridge-side").shapes.filter(({ layer }) => layer === "OUTER-EDGE");
    const [nut, tail, tailTop, nutTop] = side!.path.points;
    expect((Math.atan2(tailTop!.x - tail!.x, tailTop!.y - tail!.y) * 180) / Math.PI).toBeCloseTo(
      of("bridge.tilt"),
      6,
    );
    expect(tail!.x - nut!.x).toBeCloseTo(of("bridge.foot.thickness"), 9);
    expect(tailTop!.x - nutTop!.x).toBeCloseTo(of("bridge.top.thickness"), 9);
    expect(tailTop!.y).toBeCloseTo(number("bridge.height"), 5);
  });

  it("has a blank that holds it with the allowance at both ends and at the top, and no more than a step", () => {
    if (instrument.bridge.kind !== "ok") throw new Error("no outline");
    const { minX, maxX, maxY } = extentsOf([instrument.bridge.cut])!;
    const spare = number("bridge.blank.length") - (maxX - minX) - 2 * of("bridge.allowance");
    expect(spare).toBeGreaterThan(-1e-6);
    expect(spare).toBeLessThan(5);
    const up = number("bridge.blank.width") - maxY - of("bridge.allowance");
    expect(up).toBeGreaterThan(of("bridge.foot.thickness") * Math.sin(radians(of("bridge.tilt"))) - 1e-6);
    expect(up).toBeLessThan(1.5);
    const thick =
      number("bridge.blank.thickness") - of("bridge.foot.thickness") * Math.cos(radians(of("bridge.tilt")));
    expect(thick).toBeGreaterThan(-1e-6);
    expect(thick).toBeLessThan(1);
  });

  it("has a nut whose strings fall by their turn and their rise, out of a blank that holds it", () => {
    for (const [i, { name, diameter }] of spec.strings.entries()) {
      const { nut, post } = instrument.tuners.tuners[i]!;
      expect(nut.x).toBe(0);
      const tilt = radians(of("head.angle"));
      // The place on the head by the head's own axes, not by what made it.
      const along = (-post.x - of("nut.thickness") - of("tuner.height") * Math.sin(tilt)) / Math.cos(tilt);
      const z = of("tuner.height") * Math.cos(tilt) - along * Math.sin(tilt);
      const fall = Math.atan2(instrument.heights.nut[i]! - z, -post.x);
      expect(number(`nut.${name}.fall`)).toBeCloseTo((fall * 180) / Math.PI, 5);
      expect(number(`nut.${name}.slot`)).toBeCloseTo(diameter, 5);
      expect(number(`nut.${name}.depth`)).toBeGreaterThan(diameter / 4);
    }
    expect(number("nut.blank.height")).toBeGreaterThanOrEqual(number("nut.height"));
    expect(number("nut.blank.length")).toBeGreaterThanOrEqual(number("nut.width"));
    expect(number("nut.blank.thickness")).toBeGreaterThanOrEqual(of("nut.thickness"));
  });
});

it("a left-hand order has its screws and its cradle on the other side, and its side view as it is", () => {
  const off = (hand: "right" | "left") => {
    const spec = { ...specOf("mallow", 5), hand };
    const moved: Spec = {
      ...spec,
      bridgeFoot: { kind: "saddle", screws: [{ id: "one", at: [6, 2.75], size: 2.5 }] },
    };
    const { flat } = made(moved);
    const bore = flat("bridge-place").shapes.find(({ layer }) => layer.startsWith("BORE-"))!;
    const { minY, maxY } = extentsOf([bore.path])!;
    return { y: (minY + maxY) / 2, side: flat("bridge-side").shapes };
  };
  const [right, left] = [off("right"), off("left")];
  expect(right.y).toBeLessThan(-10);
  expect(left.y).toBeCloseTo(-right.y, 9);
  expect(left.side).toEqual(right.side);
});
