import { describe, expect, it } from "vitest";
import { pathLength } from "../../../src/geometry/measure.ts";
import type { Path } from "../../../src/geometry/path.ts";
import { placeAlong } from "../../../src/geometry/path-measures/place-along.ts";
import { memoryStore } from "../../../src/step/store.ts";
import type { Inside } from "../../../src/workshop/inside/inside.ts";
import { modelOf } from "../../../src/workshop/model.ts";
import { contains } from "../../geometry/random/contains.ts";
import { distanceTo } from "../../geometry/random/distance.ts";
import { everyCount, specOf } from "../../samples.ts";

const store = memoryStore();
const insides = (design: string, count: number, more = "", hand: "right" | "left" = "right") =>
  modelOf(specOf(design, count, more, { hand }), store).insides();
const named = (all: readonly Inside[], file: string) => {
  const found = all.find((one) => one.file === file);
  if (found === undefined) throw new Error(file);
  return found;
};
const edgesOf = ({ openings }: Inside) =>
  openings.map(({ edge, id }) => {
    if (edge?.kind !== "ok") throw new Error(id);
    return edge;
  });
const places = (path: Path, step: number) => {
  const length = pathLength(path);
  const count = Math.ceil(length / step);
  return Array.from({ length: count }, (_, i) => placeAlong(path, (length * i) / count)).flatMap((at) =>
    at.kind === "ok" ? [at] : [],
  );
};

describe("what there is", () => {
  it.each([
    ["sedge", 5, "neck-back wing-bass-back wing-treble-back inlays"],
    ["mallow", 5, "neck-back wing-bass-back wing-treble-back"],
    ["thrift", 7, "neck-front body-back"],
    ["bulrush", 4, "neck-back wing-bass-back wing-treble-back"],
  ])("%s with %i strings: %s", (design, count, files) => {
    expect(insides(design, count).map(({ file }) => file)).toEqual(
      files.split(" ").map((file) => `${file}-inside`),
    );
  });

  it("has an opening for each recess, ledge, cradle, mount and inlay, with its depth, shallowest first", () => {
    const body = named(insides("thrift", 7), "body-back-inside");
    expect(body.openings.map(({ id }) => id).sort()).toEqual(
      [
        ...["battery", "jack", "preamp", "volume"].flatMap((id) => [id, `${id}-ledge`]),
        ...["rest-shoulder-bass", "rest-shoulder-treble"],
      ].sort(),
    );
    const depths = body.openings.map(({ depth }) => depth);
    expect(depths).toEqual([...depths].sort((a, b) => a - b));
    expect(named(insides("thrift", 7), "neck-front-inside").openings).toMatchObject([
      { id: "cradle", depth: 3 },
    ]);
    // A flat template lies on the highest place of an arched board.
    const [leaf] = named(insides("sedge", 5), "inlays-inside").openings;
    expect(leaf!.depth).toBeGreaterThan(1.5);
  });
});

describe.each(everyCount)("templates of $design with $count strings", ({ design, count }) => {
  const hand = count % 2 === 0 ? "left" : "right";
  const all = insides(design, count, "", hand);

  it("keep clamps, pins and a router's base apart, by points alone, and the base on its plate", () => {
    for (const inside of all) {
      const { machine, guide } = inside.setUp!;
      if (machine.kind !== "router") throw new Error(machine.id);
      const base = machine.base! / 2;
      const { plate, clamps, holes } = inside.layout!;
      expect(clamps).toHaveLength(2);
      const pins = holes.filter(({ what }) => what.startsWith("index pin"));
      expect(pins.map(({ diameter }) => diameter)).toEqual([6, 8]);
      for (const { edge } of edgesOf(inside)) {
        // The guide's middle, pressed to the edge all round: the template lies on the edge's left.
        for (const { point, direction } of places(edge, 2)) {
          const x = point.x + (direction.y * guide.diameter) / 2;
          const y = point.y - (direction.x * guide.diameter) / 2;
          for (const { arm, base: foot } of clamps)
            for (const path of [arm, foot]) {
              expect(distanceTo([path], x, y)).toBeGreaterThan(base + 6 - 1e-6);
              expect(contains([path], x, y)).toBe(false);
            }
          for (const { at, diameter } of pins)
            expect(Math.hypot(at.x - x, at.y - y) - diameter / 2).toBeGreaterThan(base + 6 - 1e-6);
          // Across, the plate ends where the base does; along, it goes on for what holds it.
          expect(distanceTo([plate], x, y)).toBeGreaterThan(base - 1e-6);
        }
      }
      for (const { at, diameter } of holes) {
        expect(contains([plate], at.x, at.y)).toBe(true);
        expect(distanceTo([plate], at.x, at.y)).toBeGreaterThan(diameter / 2 + 4);
        for (const { arm } of clamps)
          expect(contains([arm], at.x, at.y), `${inside.file} ${at.x} ${at.y}`).toBe(false);
      }
      // Pads press on the plate, bases stand off it, beside the work.
      for (const { pad, base: foot } of clamps) {
        expect(contains([plate], pad.x, pad.y)).toBe(true);
        for (const { x, y } of foot.points) {
          expect(contains([plate], x, y)).toBe(false);
          expect(contains([inside.under], x, y)).toBe(false);
        }
        for (const { x, y } of inside.under.points) expect(contains([foot], x, y)).toBe(false);
      }
    }
  });

  it("keep 8 mm or more between the openings of a plate, and a ledge and its recess on two", () => {
    for (const inside of all) {
      const edges = edgesOf(inside);
      for (const [i, { edge }] of edges.entries())
        for (const [k, other] of edges.entries()) {
          if (k <= i || inside.plates![i] !== inside.plates![k]) continue;
          for (const { point } of places(edge, 0.5)) {
            expect(contains([other.edge], point.x, point.y)).toBe(false);
            expect(distanceTo([other.edge], point.x, point.y)).toBeGreaterThan(8 - 1e-3);
          }
        }
      for (const [i, { id }] of inside.openings.entries()) {
        const ledge = inside.openings.findIndex((one) => one.id === `${id}-ledge`);
        if (ledge >= 0) expect(inside.plates![ledge]).not.toBe(inside.plates![i]);
      }
      // Plates are counted from 0 without a gap.
      expect([...new Set(inside.plates!)].sort()).toEqual(
        Array.from({ length: Math.max(...inside.plates!) + 1 }, (_, i) => i),
      );
    }
  });

  it("bring every recess out within 0.01 mm by the virtual cut, and reach every floor", () => {
    for (const { openings, setUp, sheet } of all)
      for (const { cut, depth, passes, edge } of openings) {
        if (cut?.kind !== "ok" || edge?.kind !== "ok" || sheet?.kind !== "ok") throw new Error("no cut");
        expect(cut.deviation).toBeLessThan(0.01);
        expect(edge.places.filter(({ kind }) => kind === "hollow")).toEqual([]);
        expect(setUp!.cutter.length).toBeGreaterThanOrEqual(depth + sheet.thickness);
        expect(sheet.thickness).toBeGreaterThanOrEqual(setUp!.guide.height + 1);
        expect(passes.at(-1)).toBeCloseTo(depth, 9);
      }
  });
});

describe("the other hand, the other side, other guides", () => {
  it("lie mirrored for a left hand, with the same numbers and the cut the same way round", () => {
    const [right, left] = (["right", "left"] as const).map((hand) =>
      named(insides("sedge", 5, "", hand), "wing-bass-back-inside"),
    );
    for (const [i, opening] of right!.openings.entries()) {
      const other = left!.openings[i]!;
      expect(other.depth).toBe(opening.depth);
      const ys = (path: Path) => path.points.map(({ y }) => y);
      expect(Math.min(...ys(other.recess))).toBeCloseTo(-Math.max(...ys(opening.recess)), 9);
      expect(other.feed!.way).toBe(opening.feed!.way);
    }
  });

  it("on a table router lie with the cut face down, seen from above, with handholds at 305, and go counter-clockwise", () => {
    const named12 =
      "fixtures:\n  wing-treble-back-inside: { machine: table-router, cutter: straight-12, guide: pin-12 }\n";
    const spec = specOf("sedge", 5, named12);
    // The mount's slot is narrower than this cutter: it is left out here.
    const wide = { ...spec, rests: { ...spec.rests, mounts: [] } };
    const table = named(modelOf(wide, store).insides(), "wing-treble-back-inside");
    const handHeld = named(insides("sedge", 5), "wing-treble-back-inside");
    expect([handHeld.up, table.up]).toEqual(["back", "front"]);
    expect(table.chosen.kind).toBe("ok");
    const [a, b] = [table, handHeld].map(({ openings }) => openings[0]!.recess.points.map(({ y }) => y));
    expect(Math.max(...a!)).toBeCloseTo(-Math.min(...b!), 6);
    expect(table.openings.every(({ feed }) => feed!.way === "back")).toBe(true);
    expect(handHeld.openings.every(({ feed }) => feed!.way === "along")).toBe(true);
    expect(table.layout!.handholds).toHaveLength(2);
    for (const { recess } of table.openings)
      for (const { at } of table.layout!.handholds)
        expect(distanceTo([recess], at.x, at.y) - 20).toBeGreaterThanOrEqual(305);
  });

  it("change with a guide only where it is used", () => {
    const before = insides("sedge", 5);
    const after = insides("sedge", 5, "fixtures:\n  inlays-inside: { guide: bush-12 }\n");
    for (const inside of before) {
      const other = named(after, inside.file);
      const edges = (one: Inside) => edgesOf(one).map(({ edge }) => edge);
      if (inside.file === "inlays-inside") expect(edges(other)).not.toEqual(edges(inside));
      else for (const [i, edge] of edges(other).entries()) expect(edge).toBe(edges(inside)[i]);
    }
  });
});
