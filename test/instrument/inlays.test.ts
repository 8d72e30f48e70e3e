import { describe, expect, it } from "vitest";
import { flatFiles, flatsOf } from "../../src/drawing/flat/flats.ts";
import { extentsOf, signedArea } from "../../src/geometry/measure.ts";
import { leastRadius } from "../../src/geometry/path-measures/least-radius.ts";
import { nearestPlace } from "../../src/geometry/path-measures/nearest-place.ts";
import { whereabouts } from "../../src/geometry/path-measures/winding.ts";
import { contradictions } from "../../src/instrument/contradictions.ts";
import { madeInlays } from "../../src/instrument/fingerboard/inlays.ts";
import { boardTop } from "../../src/instrument/fingerboard/surface.ts";
import { instrument } from "../../src/instrument/instrument.ts";
import type { Spec } from "../../src/order/spec.ts";
import { memoryStore } from "../../src/step/store.ts";
import { modelOf } from "../../src/workshop/model.ts";
import { frettedSpec, specOf } from "../samples.ts";

const made = (spec: Spec) => instrument(spec, memoryStore());
const problemsOf = (spec: Spec) => contradictions(spec, made(spec));

/** A spec with values that its design would not allow. */
function forced(spec: Spec, values: Record<string, number>): Spec {
  const changed = Object.entries(values).map(([id, value]) => [id, { ...spec.values[id]!, value }]);
  return { ...spec, values: { ...spec.values, ...Object.fromEntries(changed) } };
}

/** A spec whose only inlay stands elsewhere. */
function inlayAt(spec: Spec, x: number, y: number): Spec {
  return { ...spec, inlays: spec.inlays.map((inlay) => ({ ...inlay, at: { x, y } })) };
}

describe.each([4, 5, 6])("the leaf of a sedge with %i strings", (count) => {
  const spec = specOf("sedge", count);
  const whole = made(spec);
  const [leaf] = madeInlays(whole);
  const { design, recess, insert, floor, depth, thickness, unreached, area } = leaf!;

  it("lies at its place, its recess within the design and nowhere tighter than the cutter", () => {
    const { minX, maxX } = extentsOf([design])!;
    expect(minX).toBeCloseTo(0.62 * 270 - 9, 6);
    expect(maxX).toBeCloseTo(0.62 * 270 + 9, 1);
    const tightest = leastRadius(recess, "left");
    expect(tightest.kind === "ok" && tightest.radius).toBeGreaterThan(1.5 - 1e-6);
    for (const place of recess.points) {
      const nearest = nearestPlace(design, place);
      const on = nearest.kind === "ok" && nearest.distance < 1e-6;
      expect(on || whereabouts(design, place) === "inside").toBe(true);
    }
  });

  it("has an insert smaller by the clearance all round, and tells what the cutter leaves", () => {
    for (const place of insert.points) {
      const nearest = nearestPlace(recess, place);
      expect(nearest.kind === "ok" && nearest.distance).toBeCloseTo(0.05, 6);
      expect(whereabouts(recess, place)).toBe("inside");
    }
    expect(area).toBeCloseTo(signedArea(design) - signedArea(recess), 4);
    const corners = design.points.map((place) => {
      const nearest = nearestPlace(recess, place);
      return nearest.kind === "ok" && whereabouts(recess, place) === "outside" ? nearest.distance : 0;
    });
    expect(unreached).toBeGreaterThan(0.1);
    expect(unreached).toBeCloseTo(Math.max(...corners), 6);
  });

  it("has a floor as deep as set under the lowest place of the surface over it, and not under the highest", () => {
    const { minX, maxX, minY, maxY } = extentsOf([recess])!;
    const heights: number[] = [];
    for (let i = 0; i <= 100; i++)
      for (let j = 0; j <= 100; j++) {
        const place = { x: minX + ((maxX - minX) * i) / 100, y: minY + ((maxY - minY) * j) / 100 };
        if (whereabouts(recess, place) !== "outside") heights.push(boardTop(whole.surface, place.x, place.y));
      }
    expect(heights.length).toBeGreaterThan(2000);
    const least = Math.min(...heights) - floor;
    expect(least).toBeGreaterThan(depth - 0.003);
    expect(least).toBeLessThan(depth + 0.02);
    expect(thickness).toBeGreaterThanOrEqual(Math.max(...heights) - floor - 1e-3);
  });

  it("is drawn on the board and on a sheet of its own", () => {
    const model = modelOf(spec, memoryStore());
    const shapes = (name: string) =>
      flatFiles.find((file) => file.name === name)!.of(model, memoryStore()).value.shapes;
    expect(shapes("fingerboard").filter(({ layer }) => layer === "RECESS-1_50")).toHaveLength(1);
    expect(shapes("inlays").map(({ layer }) => layer)).toEqual(["OUTER-EDGE", "PART"]);
  });
});

describe("inlays", () => {
  it("have a file only where there are any", () => {
    const names = (spec: Spec) => flatsOf(spec).map(({ name }) => name);
    expect(names(specOf("sedge", 5))).toContain("inlays");
    expect(names(specOf("thrift", 5))).not.toContain("inlays");
  });

  it.each(["right", "left"] as const)("are told of from top to bottom, %s-handed", (hand) => {
    const model = modelOf({ ...specOf("sedge", 5), hand }, memoryStore());
    const { notes } = flatFiles.find(({ name }) => name === "inlays")!.of(model, memoryStore()).value;
    const [first, second] = notes;
    expect(first!.text).toMatch(/^leaf: /);
    expect(first!.y - second!.y).toBeCloseTo(4.5, 9);
  });

  const sedge = specOf("sedge", 5);
  it.each<[string, Spec, RegExp]>([
    ["over the board's edge", inlayAt(sedge, 150, 20), /over the board's edge/],
    ["half a millimetre from the board's end", inlayAt(sedge, 270 - 9.5, 0), /of wood beside/],
    ["too narrow for its cutter", forced(sedge, { "inlay.cutter": 9 }), /doesn't cut in one piece/],
    ["through the board", forced(sedge, { "inlay.depth": 11 }), /of wood under/],
    ["taken apart by its clearance", forced(sedge, { "inlay.clearance": 6 }), /takes the insert apart/],
  ])("%s contradict the rest", (_, spec, found) => {
    const problems = problemsOf(spec);
    expect(problems).toHaveLength(1);
    expect(problems[0]!.found).toMatch(found);
    expect(problems[0]!.position.file).toMatch(/sedge/);
  });

  it("name a cutter that would do, and it does", () => {
    const [problem] = problemsOf(forced(sedge, { "inlay.cutter": 9 }));
    const would = Number(/at most ([\d.]+) mm/.exec(problem!.allowed)![1]);
    expect(problemsOf(forced(sedge, { "inlay.cutter": would }))).toEqual([]);
    expect(problemsOf(forced(sedge, { "inlay.cutter": would + 0.1 }))).toHaveLength(1);
  });

  it("keep clear of each other, told at the later one's place in the design", () => {
    const [leaf] = sedge.inlays;
    const position = { file: "sedge.yaml", line: 999, column: 5 };
    const with2 = (x: number, y: number, more: Partial<typeof leaf> = {}): Spec => ({
      ...sedge,
      inlays: [leaf!, { ...leaf!, ...more, id: "second", at: { x, y } }],
      places: { ...sedge.places, "inlay.second": position },
    });
    const there = leaf!.at.x;
    for (const [x, y] of [
      [there, 0],
      [there + 10, 0],
      [there + 17.7, 0],
      [there, 5],
    ] as const) {
      const problems = problemsOf(with2(x, y));
      expect(problems).toHaveLength(1);
      expect(problems[0]!.found).toMatch(/inlay second in inlay leaf|of wood between inlays leaf and second/);
      expect(problems[0]!.position).toEqual(position);
    }
    expect(problemsOf(with2(there + 17.7, 0))[0]!.found).toMatch(/in inlay leaf/);
    expect(problemsOf(with2(there + 18.2, 0))[0]!.found).toMatch(/0\.2 mm of wood between/);
    expect(problemsOf(with2(there + 18.8, 0))).toEqual([]);
    // Wholly inside, without an edge in common.
    const { face } = leaf!;
    const small = (p: readonly [number, number]) => [p[0] / 3, p[1] / 3] as const;
    const edges = face.edges.map((edge) => ({
      ...edge,
      to: edge.to && small(edge.to),
      through: edge.through.map(small),
    }));
    const within = with2(there, 0, { face: { ...face, along: face.along / 3, out: face.out / 3, edges } });
    const cut = forced(within, { "inlay.cutter": 0.5 });
    expect(problemsOf(cut)[0]!.found).toMatch(/inlay second in inlay leaf/);
  });

  it("keep clear of the frets' slots", () => {
    const thrift = frettedSpec(5, "", 12);
    const own = Object.entries(sedge.values).filter(([id]) => id.startsWith("inlay."));
    const values = { ...thrift.values, ...Object.fromEntries(own) };
    const leaf = { ...thrift, values, inlays: sedge.inlays };
    expect(problemsOf(inlayAt(leaf, 190, 0))).toEqual([]);
    expect(problemsOf(inlayAt(leaf, 167, 0))[0]!.found).toMatch(/slot of fret 12/);
  });
});
