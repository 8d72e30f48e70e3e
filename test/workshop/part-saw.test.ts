import { describe, expect, it } from "vitest";
import { partSawFlats } from "../../src/drawing/flat/part-saw-flats.ts";
import type { Path } from "../../src/geometry/path.ts";
import { pointOn } from "../../src/geometry/path-measures/segment-places.ts";
import { segmentsOf } from "../../src/geometry/segment.ts";
import { dimensionOf, type Spec } from "../../src/order/spec.ts";
import { memoryStore } from "../../src/step/store.ts";
import { modelOf } from "../../src/workshop/model.ts";
import { type PartSawing, sawingNamed } from "../../src/workshop/part-sawing.ts";
import { distanceTo } from "../geometry/random/distance.ts";
import { everyCount, specOf } from "../samples.ts";
import { inside, polygonOf } from "../simple-ring.ts";

const modelled = (spec: Spec) => modelOf(spec, memoryStore());

function linesOf({ cuts }: PartSawing) {
  if (cuts.sawn.kind !== "ok" || cuts.saw.kind !== "ok") throw new Error("no saw line");
  return { ...cuts.sawn, kerf: cuts.saw.blade.kerf, radius: cuts.saw.blade.radius };
}

function along(path: Path) {
  return segmentsOf(path).flatMap((segment) => {
    const count = Math.ceil(Math.hypot(segment.to.x - segment.from.x, segment.to.y - segment.from.y)) + 2;
    return Array.from({ length: count + 1 }, (_, i) => pointOn(segment, i / count));
  });
}

describe("the saw lines of wings, bodies and fingerboards", () => {
  it.each(everyCount)(
    "of $design with $count strings stand at the allowance and half a kerf, all round",
    (at) => {
      const spec = specOf(at.design, at.count);
      for (const sawing of modelled(spec).partSawing()) {
        const { lines, kerf, tight, entry } = linesOf(sawing);
        const wanted = dimensionOf(spec, "saw.allowance") + kerf / 2;
        const square = lines.filter(({ cut }) => cut !== "joint");
        const ring = polygonOf(sawing.shape.outline);
        for (const { path } of square)
          for (const { x, y } of along(path)) {
            expect(distanceTo([sawing.shape.outline], x, y), sawing.file).toBeGreaterThan(wanted - 1e-4);
            expect(inside(ring, [x, y]), sawing.file).toBe(false);
          }
        // Every place of the outline but the joint's has a line at its distance, or the blank's own edge before that.
        const { minX, maxX, minY, maxY } = sawing.blank;
        const [first] = segmentsOf(sawing.shape.outline);
        const onJoint = (x: number, y: number) =>
          sawing.shape.kind === "wing" &&
          distanceTo(
            [{ closed: false, points: [first!.from, first!.to].map((p) => ({ ...p, bulge: 0 })) }],
            x,
            y,
          ) < 1e-9;
        for (const { x, y } of along(sawing.shape.outline)) {
          if (onJoint(x, y)) continue;
          const edge = Math.min(x - minX, maxX - x, y - minY, maxY - y);
          const away = Math.min(
            ...square.map(({ path }) => distanceTo([path], x, y)),
            edge < wanted + kerf / 2 ? wanted : 1e9,
          );
          // A mitred corner's line stands farther off than its sides'.
          expect(away, `${sawing.file} ${x} ${y}`).toBeLessThan(wanted * Math.SQRT2 + 0.01);
        }
        // Lines begin and end on the blank's edge, or one goes all round and is led in to.
        for (const { path, cut } of lines) {
          const ends = [path.points[0]!, path.points.at(-1)!];
          const onEdge = ends.every(({ x, y }) => Math.min(x - minX, maxX - x, y - minY, maxY - y) < 1e-6);
          expect(onEdge, `${sawing.file} ${cut}`).toBe(cut !== "outline");
          if (cut === "outline") expect(entry?.kind).toBe("cut");
        }
        for (const { relief, radius: bend } of tight) {
          expect(bend).toBeLessThan(linesOf(sawing).radius);
          if (relief.kind !== "cut") continue;
          const [start, end] = relief.path.points;
          expect(Math.min(start!.x - minX, maxX - start!.x, start!.y - minY, maxY - start!.y)).toBeLessThan(
            1e-6,
          );
          expect(Math.min(...lines.map(({ path }) => distanceTo([path], end!.x, end!.y)))).toBeLessThan(1e-6);
        }
      }
    },
  );

  it("put index pins of unequal size in the waste, off every cut", () => {
    let found = 0;
    for (const { design, count } of everyCount) {
      const spec = specOf(design, count);
      for (const sawing of modelled(spec).partSawing()) {
        const { pins, lines, tight, entry } = linesOf(sawing);
        if (pins.kind === "none") continue;
        found += 1;
        expect(new Set(pins.pins.map(({ diameter }) => diameter)).size).toBe(2);
        const ways = [entry, ...tight.map(({ relief }) => relief)].flatMap((way) =>
          way?.kind === "cut" ? [way.path] : [],
        );
        for (const { at, diameter } of pins.pins) {
          const wood = Math.min(
            ...[...lines.map(({ path }) => path), ...ways].map((path) => distanceTo([path], at.x, at.y)),
          );
          expect(wood - diameter / 2, `${design} ${count} ${sawing.file}`).toBeGreaterThan(3);
          expect(inside(polygonOf(sawing.shape.outline), [at.x, at.y])).toBe(false);
        }
      }
    }
    expect(found).toBeGreaterThan(10);
  });
});

it("a left hand's drawing is the right hand's turned over, its words in their places", () => {
  const flat = (hand: "right" | "left", name: string) =>
    partSawFlats
      .find((one) => one.name === name)!
      .of(modelled(specOf("sedge", 5, "", { hand })), memoryStore()).value;
  for (const name of ["wing-bass-saw", "wing-treble-saw", "fingerboard-saw"]) {
    const [right, left] = [flat("right", name), flat("left", name)];
    const first = (of: typeof right) => of.shapes.find(({ layer }) => layer === "PART")!.path.points;
    const ys = (points: ReturnType<typeof first>) => points.map(({ y }) => y).sort((a, b) => a - b);
    expect(ys(first(left))).toEqual(ys(first(right).map((p) => ({ ...p, y: 0 - p.y }))));
    expect(left.notes.map(({ text }) => text.replace(/(HEAD|TAIL) END FIRST/, "")).sort()).toEqual(
      right.notes.map(({ text }) => text.replace(/(HEAD|TAIL) END FIRST/, "")).sort(),
    );
  }
});

it("a blank's own edge is kept where a body isn't cut", () => {
  const thrift = specOf("thrift", 5);
  const spec: Spec = { ...thrift, body: { ...thrift.body!, cut: ["bass", "treble"] } };
  const { instrument, partSawing, blanks } = modelled(spec);
  const { lines } = linesOf(sawingNamed(partSawing(), "body-saw"));
  const { outline } = instrument.body!;
  if (outline.kind !== "ok") throw new Error(outline.kind);
  const head = Math.min(...outline.path.points.map(({ x }) => x));
  expect(blanks.sawn[0]!.place.minX).toBeCloseTo(head, 6);
  // What is left of the line runs from the head's edge to the tail on either side.
  expect(lines.map(({ cut }) => cut)).toEqual(["outline", "outline"]);
  for (const { path } of lines) expect(Math.min(...path.points.map(({ x }) => x))).toBeCloseTo(head, 6);
});

it("a body joined from two pieces shows its glue line in the middle", () => {
  const thrift = specOf("thrift", 5);
  const boards = thrift.shop.stock.boards.map((one) => ({ ...one, width: Math.min(one.width, 90) }));
  const of = (spec: Spec) =>
    partSawFlats.find(({ name }) => name === "body-saw")!.of(modelled(spec), memoryStore()).value;
  const joined = of({ ...thrift, shop: { ...thrift.shop, stock: { ...thrift.shop.stock, boards } } });
  const words = joined.notes.map(({ text }) => text);
  expect(words.filter((text) => text === "GLUE LINE")).toHaveLength(1);
  const [line] = joined.shapes.filter(({ layer, chain }) => layer === "NOTE" && chain === true);
  for (const { y } of line!.path.points) expect(y).toBeCloseTo(0, 6);
  expect(of(thrift).notes.some(({ text }) => text === "GLUE LINE")).toBe(false);
});
