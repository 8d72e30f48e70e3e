import { describe, expect, it } from "vitest";
import type { Flat } from "../../src/drawing/flat/flat.ts";
import { flatFiles } from "../../src/drawing/flat/flats.ts";
import { extentsOf, signedArea } from "../../src/geometry/measure.ts";
import { nearestPlace } from "../../src/geometry/path-measures/nearest-place.ts";
import { whereabouts } from "../../src/geometry/path-measures/winding.ts";
import { segmentsOf } from "../../src/geometry/segment.ts";
import { intoCore } from "../../src/instrument/core/frame.ts";
import { instrument } from "../../src/instrument/instrument.ts";
import { frontEdge } from "../../src/instrument/tailpiece/front.ts";
import { madeTailpiece } from "../../src/instrument/tailpiece/tailpiece.ts";
import { dimensionOf, type Spec } from "../../src/order/spec.ts";
import { dimensionsOf } from "../../src/report/dimensions.ts";
import { memoryStore } from "../../src/step/store.ts";
import { modelOf } from "../../src/workshop/model.ts";
import { forced } from "../forced.ts";
import { everyCount, specOf } from "../samples.ts";
import { crossings, polygonOf } from "../simple-ring.ts";

function partsOf(spec: Spec) {
  const made = instrument(spec, memoryStore());
  return { made, plate: madeTailpiece(made), of: (id: string) => dimensionOf(spec, id) };
}

function flatOf(spec: Spec): Flat {
  const store = memoryStore();
  return flatFiles.find(({ name }) => name === "tailpiece")!.of(modelOf(spec, store), store).value;
}

const cases = everyCount.flatMap((at) => [0, 15, -10].map((slant) => ({ ...at, slant })));

describe.each(cases)(
  "the tailpiece of $design with $count strings, slant $slant",
  ({ design, count, slant }) => {
    const spec = forced(specOf(design, count), { "tailpiece.slant": slant });
    const { made, plate, of } = partsOf(spec);
    const { exits } = made;

    it("is one simple counter-clockwise outline, as wide as set and as long on the centreline", () => {
      expect(crossings(polygonOf(plate.path))).toBe(0);
      expect(signedArea(plate.path)).toBeGreaterThan(0);
      const { minY, maxX, maxY } = extentsOf([plate.path])!;
      expect(maxY - minY).toBeCloseTo(of("tailpiece.width"), 9);
      expect(maxY).toBeCloseTo(-minY, 9);
      expect(maxX).toBeCloseTo(plate.end, 9);
      expect(plate.end - plate.front).toBeCloseTo(of("tailpiece.length"), 9);
    });

    it("has a front edge through every exit, without a kink between the outer ones", () => {
      for (const [i, x] of exits.along.entries()) {
        const place = { x, y: exits.across[i]! };
        const nearest = nearestPlace(plate.path, place);
        expect(nearest.kind === "ok" && nearest.distance).toBeLessThan(1e-6);
        expect(plate.foremost).toBeLessThanOrEqual(x + 1e-9);
      }
      const middle = nearestPlace(plate.path, { x: plate.front, y: 0 });
      expect(middle.kind === "ok" && middle.distance).toBeLessThan(1e-6);
      const ends = segmentsOf(plate.path).map((segment) => directions(segment));
      const kinks = ends.map(({ arrive }, i) => turn(arrive, ends[(i + 1) % ends.length]!.leave));
      // Every corner is rounded, so the whole outline runs on without a kink.
      for (const kink of kinks) expect(Math.abs(kink)).toBeLessThan(1e-6);
    });

    it("holds each string behind its exit, on the line that it comes along", () => {
      for (const [i, { at, exit, size }] of plate.strings.entries()) {
        const contact = {
          x: intoCore(made.core, { x: of("string.length"), z: made.heights.bridge[i]! }).x,
          y: made.layout.bridge[i]!,
        };
        expect(Math.hypot(exit.x - exits.along[i]!, exit.y - exits.across[i]!)).toBeLessThan(2e-6);
        expect(Math.hypot(at.x - exit.x, at.y - exit.y)).toBeCloseTo(of("tailpiece.hole.at"), 6);
        const [ax, ay, bx, by] = [exit.x - contact.x, exit.y - contact.y, at.x - exit.x, at.y - exit.y];
        expect(Math.abs(ax * by - ay * bx) / Math.hypot(ax, ay)).toBeLessThan(1e-6);
        expect(ax * bx + ay * by).toBeGreaterThan(0);
        expect(size).toBe(of("tailpiece.hole"));
        expect(whereabouts(plate.path, at)).toBe("inside");
      }
      for (const { at } of plate.posts) expect(whereabouts(plate.path, at)).toBe("inside");
    });
  },
);

function directions(segment: ReturnType<typeof segmentsOf>[number]) {
  if (segment.kind === "line") {
    const way = Math.atan2(segment.to.y - segment.from.y, segment.to.x - segment.from.x);
    return { leave: way, arrive: way };
  }
  const turned = (Math.sign(segment.sweep) * Math.PI) / 2;
  return { leave: segment.start + turned, arrive: segment.start + segment.sweep + turned };
}

function turn(a: number, b: number): number {
  return Math.atan2(Math.sin(b - a), Math.cos(b - a));
}

describe("the front edge", () => {
  it("of exits in one line is that line, from side to side", () => {
    const edge = frontEdge(
      [15, 6, -4, -15].map((y) => ({ x: 100 - 0.2 * y, y })),
      21,
    );
    if (edge.kind !== "ok") throw new Error(edge.kind);
    expect(edge.middle).toBeCloseTo(100, 9);
    expect(edge.points[0]!.y).toBe(21);
    expect(edge.points.at(-1)!.y).toBe(-21);
    for (const { x, y, bulge } of edge.points) {
      expect(x).toBeCloseTo(100 - 0.2 * y, 6);
      expect(Math.abs(bulge)).toBeLessThan(1e-9);
    }
  });

  it("names exits beyond the plate's sides, and such as no fair curve passes", () => {
    const line = [15, 0, -15].map((y) => ({ x: 100, y }));
    expect(frontEdge(line, 15).kind).toBe("outside");
    expect(frontEdge([line[0]!, line[0]!, line[2]!], 21).kind).toBe("unfair");
    expect(frontEdge([{ x: Number.NaN, y: 15 }, ...line.slice(1)], 21).kind).toBe("unfair");
  });
});

describe("the tailpiece's numbers", () => {
  /** Every number of a spec's report by its name. */
  function numbers(spec: Spec): Map<string, number> {
    const model = modelOf(spec, memoryStore());
    return new Map(dimensionsOf(spec).map(({ id, of }) => [id, of(model)]));
  }

  it.each(everyCount)("of $design with $count strings follow from what is set", ({ design, count }) => {
    const spec = specOf(design, count);
    const all = numbers(spec);
    const of = (id: string) => all.get(id)!;
    for (const { name } of spec.strings)
      expect(of(`string.${name}.afterlength`)).toBeCloseTo(of("string.length") / 6, 5);
    const d = spec.strings.map(({ diameter }) => diameter);
    const skins = d.reduce((sum, one) => sum + one, 0) - (d[0]! + d.at(-1)!) / 2;
    expect(of("tailpiece.gap")).toBeCloseTo((of("tailpiece.spread") - skins) / (count - 1), 6);
    expect(of("tailpiece.clearance")).toBeCloseTo(of("tailpiece.height") - of("tailpiece.thickness"), 9);
    expect(of("tailpiece.end") - of("tailpiece.exit")).toBeCloseTo(of("tailpiece.length"), 6);
  });

  it("with a slant lengthen the bass side's afterlengths and shorten the treble side's, and leave the middle's", () => {
    const [straight, slanted] = ["0 deg", "10 deg"].map((slant) =>
      numbers(specOf("sedge", 5, `set:\n  tailpiece.slant: ${slant}\n`)),
    );
    const change = (id: string) => slanted!.get(id)! - straight!.get(id)!;
    const changes = ["E5", "A4", "D4", "G3", "C3"].map((name) => change(`string.${name}.afterlength`));
    expect([...changes].sort((a, b) => a - b)).toEqual(changes);
    expect(changes[0]).toBeLessThan(-2);
    expect(changes[4]).toBeGreaterThan(2);
    expect(Math.abs(change("tailpiece.exit"))).toBeLessThan(0.01);
    expect(change("tailpiece.gap")).toBe(0);
  });
});

describe("the tailpiece's machine file", () => {
  it("bores a hole for every string and post, and names each string and its groove", () => {
    const spec = specOf("thrift", 7);
    const { shapes, notes } = flatOf(spec);
    const count = (layer: string) => shapes.filter((shape) => shape.layer === layer).length;
    expect([count("OUTER-EDGE"), count("BORE-2_40"), count("BORE-4_00"), count("SCRIBE")]).toEqual([
      1, 7, 2, 7,
    ]);
    for (const { name, diameter } of spec.strings) {
      const { text } = notes.find((note) => note.text.startsWith(`${name} `))!;
      expect(text).toContain(`${diameter.toFixed(2)} WIDE ${(diameter / 2).toFixed(2)} DEEP`);
    }
  });

  it("of a left-hand order has y turned round, and nothing else", () => {
    const right = specOf("sedge", 5, "set:\n  tailpiece.slant: 10 deg\n");
    const [ours, theirs] = [flatOf(right), flatOf({ ...right, hand: "left" })];
    for (const [i, { layer, path }] of ours.shapes.entries()) {
      expect(theirs.shapes[i]!.layer).toBe(layer);
      const [a, b] = [extentsOf([path])!, extentsOf([theirs.shapes[i]!.path])!];
      expect([b.minX, b.maxX, b.minY, b.maxY]).toEqual(
        [a.minX, a.maxX, -a.maxY, -a.minY].map((value) => expect.closeTo(value, 9)),
      );
    }
    expect(theirs.notes.map(({ text }) => text)).toEqual(ours.notes.map(({ text }) => text));
  });
});
