import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { extentsOf, signedArea } from "../../src/geometry/measure.ts";
import { nearestPlace } from "../../src/geometry/path-measures/nearest-place.ts";
import { type Segment, segmentsOf } from "../../src/geometry/segment.ts";
import { type SectionForm, sectionPath } from "../../src/instrument/neck/section.ts";
import { memoryStore } from "../../src/step/store.ts";
import { modelOf } from "../../src/workshop/model.ts";
import { runs, seed } from "../geometry/random/runs.ts";
import { everyCount, specOf } from "../samples.ts";
import { crossings, polygonOf } from "../simple-ring.ts";

const forms: fc.Arbitrary<SectionForm> = fc.record({
  half: fc.double({ min: 10, max: 40, noNaN: true }),
  depth: fc.double({ min: 8, max: 60, noNaN: true }),
  fullness: fc.double({ min: 0, max: 0.6, noNaN: true }),
  square: fc.oneof(fc.constant(0), fc.constant(1), fc.double({ min: 0, max: 1, noNaN: true })),
});

/** How sharply an outline turns from one segment to the next, degrees. */
function turns(segments: readonly Segment[]): number[] {
  const way = (segment: Segment, end: 0 | 1) => {
    const chord = Math.atan2(segment.to.y - segment.from.y, segment.to.x - segment.from.x);
    return chord + (segment.kind === "arc" ? (end - 0.5) * segment.sweep : 0);
  };
  return segments.map((segment, i) => {
    const turn = way(segment, 0) - way(segments.at(i - 1)!, 1);
    return (Math.abs(Math.atan2(Math.sin(turn), Math.cos(turn))) * 180) / Math.PI;
  });
}

describe("a section of the neck", () => {
  it("fills its half-width and depth, alike on both sides, with as many points whatever its form", () => {
    let [round, boxes] = [0, 0];
    fc.assert(
      fc.property(forms, (form) => {
        const path = sectionPath(form);
        if (form.square === 0) round++;
        if (form.square === 1) boxes++;
        expect(path.points).toHaveLength(
          sectionPath({ half: 1, depth: 1, fullness: 0, square: 0 }).points.length,
        );
        const { minX, maxX, minY, maxY } = extentsOf([path])!;
        expect([minX, maxX, minY, maxY]).toEqual(
          [-form.half, form.half, -form.depth, 0].map((value) => expect.closeTo(value, 5)),
        );
        for (const { x, y } of path.points)
          expect(
            path.points.some((other) => Math.abs(other.x + x) < 1e-9 && Math.abs(other.y - y) < 1e-9),
          ).toBe(true);
        expect(crossings(polygonOf(path))).toBe(0);
      }),
      { numRuns: runs / 10, seed },
    );
    expect(round).toBeGreaterThan(runs / 100);
    expect(boxes).toBeGreaterThan(runs / 100);
  });

  it("is half an ellipse at no fullness and its box when square, and fuller in between the higher either is", () => {
    fc.assert(
      fc.property(forms, ({ half, depth, fullness }) => {
        const area = (form: Partial<SectionForm>) =>
          signedArea(sectionPath({ half, depth, fullness, square: 0, ...form }));
        expect(area({ fullness: 0 }) / ((Math.PI * half * depth) / 2)).toBeCloseTo(1, 2);
        expect(area({ square: 1 })).toBeCloseTo(2 * half * depth, 6);
        const steps = [0, 0.2, 0.4, 0.6].map((value) => area({ fullness: value }));
        expect(steps).toEqual(steps.toSorted((a, b) => a - b));
        const squared = [0, 0.3, 0.6, 1].map((value) => area({ square: value }));
        expect(squared).toEqual(squared.toSorted((a, b) => a - b));
      }),
      { numRuns: runs / 10, seed },
    );
  });

  it("reaches its fullness of the way from half an ellipse to the box along the diagonal", () => {
    for (const fullness of [0, 0.2, 0.5]) {
      const path = sectionPath({ half: 14, depth: 11, fullness, square: 0 });
      const share = Math.SQRT1_2 + fullness * (1 - Math.SQRT1_2);
      const found = nearestPlace(path, { x: 14 * share, y: -11 * share });
      expect(found.kind === "ok" ? found.distance : Number.NaN).toBeLessThan(1e-9);
    }
  });

  it("turns only at the board's two edges, and runs on tangent all round the back", () => {
    fc.assert(
      fc.property(forms, (form) => {
        const sharp = turns(segmentsOf(sectionPath({ ...form, square: 0 }))).filter((turn) => turn > 0.05);
        expect(sharp).toEqual([expect.closeTo(90, 3), expect.closeTo(90, 3)]);
      }),
      { numRuns: runs / 10, seed },
    );
  });

  it("with a clearance lies that far outside of itself", () => {
    fc.assert(
      fc.property(forms, fc.double({ min: 0.05, max: 0.5, noNaN: true }), (form, clearance) => {
        const usual = { ...form, depth: Math.min(form.depth, 1.6 * form.half), square: 0 };
        const path = sectionPath(usual);
        for (const point of sectionPath(usual, clearance).points) {
          const found = nearestPlace(path, point);
          expect(Math.abs((found.kind === "ok" ? found.distance : 0) - clearance)).toBeLessThan(0.02);
        }
      }),
      { numRuns: runs / 10, seed },
    );
  });
});

describe.each(everyCount)("the sections of $design with $count strings", ({ design, count }) => {
  const { spec, instrument } = modelOf(specOf(design, count), memoryStore());

  it("stand at both named stations and at the design's between, with the wood that is named there", () => {
    const { neckSections, neckWood } = instrument;
    expect(neckSections.map(({ name }) => name)).toEqual(["nut", ...spec.stations.neck.map(String), "heel"]);
    expect(neckSections[0]).toMatchObject({ x: neckWood.nut.x, depth: expect.closeTo(neckWood.nut.wood, 5) });
    expect(neckSections.at(-1)).toMatchObject({ depth: expect.closeTo(neckWood.heel.wood, 5) });
    for (const { path } of neckSections) expect(path.points.length).toBeLessThanOrEqual(80);
  });
});
