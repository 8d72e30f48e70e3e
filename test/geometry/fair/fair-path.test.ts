import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type FairCurve, fairCurve } from "../../../src/geometry/fair/fair-curve.ts";
import { fairPath } from "../../../src/geometry/fair/fair-path.ts";
import { spanAt } from "../../../src/geometry/fair/span-at.ts";
import { segmentLength, segmentsOf } from "../../../src/geometry/segment.ts";
import { runs } from "../random/runs.ts";
import { distanceTo, greatestKink } from "./distance.ts";
import { greedyArcs } from "./greedy-rival.ts";
import { curveOf, type Made, made } from "./made.ts";
import { drafts, wildDrafts } from "./random-stations.ts";
import { shapes } from "./shapes.ts";

const TOLERANCE = 0.01;

/** The farthest that dense places of the curve are from the path, where no rounding took the curve away. */
function straying(curve: FairCurve, path: Made["path"], looks: number): number {
  const distance = distanceTo(path);
  let worst = 0;
  for (const span of curve.spans) {
    for (let piece = 0; piece < span.steps.length; piece++) {
      for (let i = 0; i <= looks; i++) worst = Math.max(worst, distance(spanAt(span, piece, i / looks)));
    }
  }
  return worst;
}

describe.each(shapes)("the fair curve of a $name", ({ stations, closed }) => {
  const curve = curveOf(stations, closed);
  const fit = made(fairPath(curve));

  test("its arcs keep within 0.01 mm, by dense looks of another making", () => {
    expect(straying(curve, fit.path, 400)).toBeLessThanOrEqual(TOLERANCE);
    expect(fit.deviation).toBeLessThanOrEqual(TOLERANCE);
    expect(fit.deviation).toBeGreaterThan(TOLERANCE / 2);
  });

  test("it takes no more arcs than a greedy longest-biarc fit", () => {
    const greedy = curve.spans.reduce((sum, span) => sum + greedyArcs(span, TOLERANCE), 0);
    expect(fit.arcs).toBe(closed ? fit.path.points.length : fit.path.points.length - 1);
    expect(fit.arcs).toBeLessThanOrEqual(greedy);
  });

  test("its arcs are tangent, and none is more than half a circle", () => {
    expect(greatestKink(fit.path)).toBeLessThan(1e-6);
    for (const { bulge } of fit.path.points) expect(Math.abs(bulge)).toBeLessThanOrEqual(1);
  });
});

test("all named shapes together take a fifth fewer arcs than the greedy fit", () => {
  let ours = 0;
  let greedy = 0;
  for (const { stations, closed } of shapes) {
    const curve = curveOf(stations, closed);
    ours += made(fairPath(curve)).arcs;
    greedy += curve.spans.reduce((sum, span) => sum + greedyArcs(span, TOLERANCE), 0);
  }
  expect(ours).toBeLessThan(0.8 * greedy);
});

describe("the fair path of random stations", () => {
  test("takes no more arcs than the greedy fit, and all together a quarter fewer", () => {
    let [ours, greedy] = [0, 0];
    fc.assert(
      fc.property(drafts, ({ stations, closed }) => {
        fc.pre(stations.length > 2);
        const curve = curveOf(
          stations.map(({ x, y }) => ({ x, y })),
          closed,
        );
        const { arcs } = made(fairPath(curve));
        const rival = curve.spans.reduce((sum, span) => sum + greedyArcs(span, TOLERANCE), 0);
        ours += arcs;
        greedy += rival;
        expect(arcs).toBeLessThanOrEqual(rival);
      }),
      { seed: 13, numRuns: Math.ceil(runs / 10) },
    );
    expect(ours).toBeLessThan(0.75 * greedy);
  });

  test("follows the curve, tangent between corners, through every named station", () => {
    const seen = { tried: 0, closed: 0, corners: 0, rounded: 0, named: 0, noRoom: 0 };
    fc.assert(
      fc.property(drafts, ({ stations, closed }) => {
        const curve = curveOf(stations, closed);
        const outcome = fairPath(curve);
        seen.tried++;
        if (outcome.kind === "no-room") seen.noRoom++;
        if (outcome.kind === "no-room") return;
        const fit = made(outcome);
        const sharp = curve.corners.some((radius) => radius === 0);
        const rounded = curve.corners.some((radius) => radius > 0);
        if (closed) seen.closed++;
        if (curve.corners.length > 0) seen.corners++;
        if (rounded) seen.rounded++;
        if (!rounded) expect(straying(curve, fit.path, 24)).toBeLessThanOrEqual(TOLERANCE);
        if (!sharp) expect(greatestKink(fit.path)).toBeLessThan(1e-3);
        expect(Math.max(...fit.path.points.map(({ bulge }) => Math.abs(bulge)))).toBeLessThanOrEqual(1);
        const names = stations.filter((s) => s.id !== undefined && !fit.passed.includes(s.id));
        if (names.length > 0) seen.named++;
        expect(fit.stations.map((s) => s.id).sort()).toEqual(names.map((s) => s.id).sort());
        for (const { id, index } of fit.stations) {
          const station = stations.find((s) => s.id === id)!;
          expect(fit.path.points[index]).toMatchObject({ x: station.x, y: station.y });
        }
      }),
      { seed: 11, numRuns: Math.ceil(runs / 2) },
    );
    expect(seen.noRoom).toBeLessThan(0.05 * seen.tried);
    for (const share of [seen.closed, seen.corners, seen.rounded, seen.named]) {
      expect(share).toBeGreaterThan(0.1 * seen.tried);
    }
  });

  test("whatever the stations, the outcome has a name and the numbers are finite", () => {
    const seen = new Map<string, number>();
    fc.assert(
      fc.property(wildDrafts, ({ stations, closed }) => {
        const outcome = fairCurve(stations, { closed });
        if (outcome.kind === "invalid") {
          seen.set(outcome.problem, (seen.get(outcome.problem) ?? 0) + 1);
          return;
        }
        const fit = fairPath(outcome.curve);
        seen.set(fit.kind, (seen.get(fit.kind) ?? 0) + 1);
        if (fit.kind !== "ok") return;
        const sound = fit.path.points.every(
          ({ x, y, bulge }) => Number.isFinite(x) && Number.isFinite(y) && Math.abs(bulge) <= 1,
        );
        expect(sound).toBe(true);
        expect(fit.deviation).toBeLessThanOrEqual(TOLERANCE);
      }),
      { seed: 12, numRuns: Math.ceil(runs / 2) },
    );
    for (const kind of [
      "ok",
      "too-few",
      "not-finite",
      "too-large",
      "repeated",
      "negative-radius",
      "same-id",
      "no-room",
    ]) {
      expect(seen.get(kind) ?? 0, kind).toBeGreaterThan(0);
    }
  });
});

test.each(["eight points of a circle", "clamped at both ends"])("%s: no leg ends in a stump", (name) => {
  const { stations, closed } = shapes.find((shape) => shape.name === name)!;
  const { path } = made(fairPath(curveOf(stations, closed)));
  const lengths = segmentsOf(path)
    .map(segmentLength)
    .sort((a, b) => a - b);
  expect(lengths[0]!).toBeGreaterThan(0.3 * lengths[lengths.length >> 1]!);
});

test("saboteur: an arc's bulge changed by a hundredth is seen by the measure of straying and of kinks", () => {
  const { stations, closed } = shapes[0]!;
  const curve = curveOf(stations, closed);
  const fit = made(fairPath(curve));
  const points = fit.path.points.map((p, i) => (i === 5 ? { ...p, bulge: p.bulge * 1.01 + 0.005 } : p));
  expect(straying(curve, { closed, points }, 100)).toBeGreaterThan(TOLERANCE);
  expect(greatestKink({ closed, points })).toBeGreaterThan(0.05);
});

test("a tolerance of nothing is refused, and a wider one takes fewer arcs", () => {
  const { stations, closed } = shapes[1]!;
  const curve = curveOf(stations, closed);
  expect(fairPath(curve, { tolerance: 0 })).toEqual({ kind: "invalid", problem: "tolerance" });
  expect(fairPath(curve, { tolerance: Number.NaN }).kind).toBe("invalid");
  const [fine, wide] = [
    made(fairPath(curve, { tolerance: 0.001 })),
    made(fairPath(curve, { tolerance: 0.1 })),
  ];
  const usual = made(fairPath(curve));
  expect(fine.arcs).toBeGreaterThan(1.8 * usual.arcs);
  expect(wide.arcs).toBeLessThan(0.6 * usual.arcs);
  expect(straying(curve, fine.path, 400)).toBeLessThanOrEqual(0.001);
  expect(straying(curve, wide.path, 400)).toBeLessThanOrEqual(0.1);
});
