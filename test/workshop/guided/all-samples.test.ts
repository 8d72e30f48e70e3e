import { basename } from "node:path";
import { describe, expect, it } from "vitest";
import { extentsOf } from "../../../src/geometry/measure.ts";
import { segmentsOf } from "../../../src/geometry/segment.ts";
import { fixtureNames } from "../../../src/order/fixture-names.ts";
import { loadOrder } from "../../../src/pack/load.ts";
import { memoryStore } from "../../../src/step/store.ts";
import type { Fixture } from "../../../src/workshop/guided/fixture.ts";
import { modelOf } from "../../../src/workshop/model.ts";
import { greatestAlong } from "../../../src/workshop/virtual-cut/along.ts";
import { aheadOf } from "../../../src/workshop/virtual-cut/nearest.ts";
import { orderFiles } from "../../samples.ts";
import { leastTo, middlesOn } from "./swept.ts";

const store = memoryStore();
const samples = orderFiles.map((file) => {
  const spec = loadOrder(file, store);
  if (!spec.ok) throw new Error(JSON.stringify(spec.problems));
  return { name: basename(file, ".yaml"), model: modelOf(spec.value, store) };
});

const edgeOf = ({ file, edge }: Fixture) => {
  if (edge?.kind !== "ok") throw new Error(`${file}: ${edge?.kind}`);
  return edge;
};

describe.each(samples)("the fixtures of $name", ({ model }) => {
  const fixtures = model.fixtures();

  it("are those that its build has, a neck's and a fingerboard's among them", () => {
    const names = fixtures.map(({ file }) => file);
    expect(names).toEqual(fixtureNames(model.spec));
    expect(names).toEqual(expect.arrayContaining(["neck-shaper", "fingerboard-router"]));
    expect(names).toHaveLength(4);
  });

  it("bring their parts out within 0.01 mm and leave what they don't cut", () => {
    for (const { file, cut } of fixtures) {
      if (cut?.kind !== "ok") throw new Error(file);
      expect(cut.deviation, file).toBeLessThan(0.01);
      expect(cut.joint, file).toBeLessThan(1e-6);
    }
  });

  it("take off the neck no more than the saw leaves", () => {
    const { plan } = model.sawing.cuts;
    const neck = fixtures.find(({ part }) => part === "neck")!;
    if (plan.kind !== "ok") throw new Error(plan.kind);
    const { distance } = aheadOf(segmentsOf(plan.kept));
    const most = greatestAlong(segmentsOf(neck.run.path), distance).value;
    const least = 0 - greatestAlong(segmentsOf(neck.run.path), (place) => 0 - distance(place)).value;
    expect(most).toBeCloseTo(neck.allowance, 2);
    expect(least).toBeCloseTo(neck.allowance, 2);
  });

  it("have no clamp, pin, screw or handhold in the cutter's circle, by points alone", () => {
    const met = new Set<string>();
    for (const fixture of fixtures) {
      const { cutter, guide } = fixture.setUp!;
      const middles = middlesOn(edgeOf(fixture).edge, guide.diameter);
      for (const { id, what, path, margin } of fixture.kept) {
        met.add(what);
        const gap = leastTo(path, middles) - cutter.diameter / 2;
        expect(gap, `${fixture.file} ${id}`).toBeGreaterThan(margin - 1e-3);
      }
    }
    for (const what of ["pin", "screw", "handhold"]) expect(met.has(what), what).toBe(true);
  });

  it("are led on 50 mm or more beyond the wood, and lie on their base with everything that holds", () => {
    for (const fixture of fixtures) {
      const { edge, template } = edgeOf(fixture);
      const { minX, maxX, minY, maxY } = extentsOf([template])!;
      for (const { id, path } of fixture.kept) {
        const own = extentsOf([path])!;
        expect(own.minX > minX && own.maxX < maxX && own.minY > minY && own.maxY < maxY, id).toBe(true);
      }
      const [first, last] = [edge.points[0]!, edge.points.at(-1)!];
      const ends = [fixture.run.path.points[0]!, fixture.run.path.points.at(-1)!];
      for (const [i, at] of [first, last].entries()) {
        const beyond = Math.hypot(at.x - ends[i]!.x, at.y - ends[i]!.y);
        expect(beyond - fixture.waste[i]!, fixture.file).toBeGreaterThan(50 - 1e-6);
      }
    }
  });

  it("cut neck and board from the core to the nut, with the grain where they taper", () => {
    for (const { part, feed, grain } of fixtures) {
      if (part !== "neck" && part !== "fingerboard") continue;
      expect(feed!.tool.length).toBeGreaterThan(3);
      for (const { way } of feed!.tool) expect(way.x).toBeLessThan(-0.8);
      expect(grain!.with + grain!.along).toBeGreaterThan(10 * grain!.against);
    }
  });
});
