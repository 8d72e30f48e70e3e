import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { curvatureComb } from "../../../src/geometry/fair/curvature-comb.ts";
import { type FairCurve, fairCurve } from "../../../src/geometry/fair/fair-curve.ts";
import type { FairSpan } from "../../../src/geometry/fair/fair-span.ts";
import { spanAt } from "../../../src/geometry/fair/span-at.ts";
import type { Station } from "../../../src/geometry/fair/station.ts";
import { runs } from "../random/runs.ts";
import { drafts } from "./random-stations.ts";
import { shapes } from "./shapes.ts";

function curveOf(stations: readonly Station[], closed: boolean): FairCurve {
  const outcome = fairCurve(stations, { closed });
  if (outcome.kind !== "ok") throw new Error(`${outcome.problem} at ${outcome.at}`);
  return outcome.curve;
}

/** Curvature from three places of the curve alone, by the circle through them, just before or after a station. */
function curvatureBeside(span: FairSpan, piece: number, ends: readonly [number, number, number]): number {
  const [a, b, c] = [
    spanAt(span, piece, ends[0]),
    spanAt(span, piece, ends[1]),
    spanAt(span, piece, ends[2]),
  ];
  const twice = (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x);
  return (2 * twice) / (gap(a, b) * gap(b, c) * gap(a, c));
}

type Place = { x: number; y: number };

function gap(a: Place, b: Place): number {
  return Math.hypot(b.x - a.x, b.y - a.y);
}

test("the curve passes its stations, and direction and curvature run on through them", () => {
  fc.assert(
    fc.property(drafts, ({ stations, closed }) => {
      const worst = { place: 0, direction: 0, curvature: 0, measured: 0 };
      for (const span of curveOf(stations, closed).spans) {
        for (const [piece] of span.steps.entries()) {
          const end = spanAt(span, piece, 1);
          const to = span.stations[(piece + 1) % span.stations.length]!;
          worst.place = Math.max(
            worst.place,
            gap(end, to),
            gap(spanAt(span, piece, 0), span.stations[piece]!),
          );
          const next = piece + 1 < span.steps.length ? piece + 1 : span.closed ? 0 : undefined;
          if (next === undefined) continue;
          const on = spanAt(span, next, 0);
          worst.direction = Math.max(worst.direction, Math.hypot(end.tx - on.tx, end.ty - on.ty));
          worst.curvature = Math.max(worst.curvature, Math.abs(end.curvature - on.curvature));
          const before = curvatureBeside(span, piece, [0.998, 0.999, 1]);
          const after = curvatureBeside(span, next, [0, 0.001, 0.002]);
          worst.measured = Math.max(
            worst.measured,
            Math.abs(before - end.curvature),
            Math.abs(after - on.curvature),
          );
        }
      }
      expect(Math.max(worst.place, worst.direction, worst.curvature)).toBeLessThan(1e-9);
      expect(worst.measured).toBeLessThan(2e-3);
    }),
    { seed: 21, numRuns: runs },
  );
});

test("saboteur: with one slope turned by a degree the curvature jumps", () => {
  const span = curveOf(shapes[0]!.stations, false).spans[0]!;
  const angle = Math.PI / 180;
  const slopes = span.slopes.map(({ x, y }, i) =>
    i === 3
      ? { x: x * Math.cos(angle) - y * Math.sin(angle), y: x * Math.sin(angle) + y * Math.cos(angle) }
      : { x, y },
  );
  const bent = { ...span, slopes };
  expect(Math.abs(spanAt(bent, 2, 1).curvature - spanAt(bent, 3, 0).curvature)).toBeGreaterThan(1e-4);
});

test("an end asked for a direction has it, a free end has no curvature", () => {
  const stations: Station[] = [
    { x: 0, y: 0, leave: 75 },
    { x: 30, y: 40 },
    { x: 90, y: 30, corner: 0, arrive: -10, leave: -120 },
    { x: 70, y: -20 },
    { x: 20, y: -30 },
  ];
  const [first, second] = curveOf(stations, false).spans as [FairSpan, FairSpan];
  const degrees = ({ tx, ty }: { tx: number; ty: number }) => (Math.atan2(ty, tx) * 180) / Math.PI;
  expect(degrees(spanAt(first, 0, 0))).toBeCloseTo(75, 9);
  expect(degrees(spanAt(first, 1, 1))).toBeCloseTo(-10, 9);
  expect(degrees(spanAt(second, 0, 0))).toBeCloseTo(-120, 9);
  expect(spanAt(second, 1, 1).curvature).toBeCloseTo(0, 12);
});

describe("the curve is fair", () => {
  /** How often a list of numbers changes its sign, near-zeros left out. */
  const changes = (values: readonly number[]) => {
    const large = values.filter((v) => Math.abs(v) > 1e-7);
    return large.filter((v, i) => i > 0 && v * large[i - 1]! < 0).length;
  };

  test.each(shapes)(
    "$name: it bends to and fro no more often than the line through its stations",
    ({ stations, closed }) => {
      const span = curveOf(stations, closed).spans[0]!;
      const curvatures = span.steps.flatMap((_, piece) =>
        Array.from({ length: 50 }, (_, i) => spanAt(span, piece, i / 50).curvature),
      );
      const ring = closed ? [...stations, stations[0]!, stations[1]!] : stations;
      const turns = ring.slice(2).map((c, i) => {
        const [a, b] = [ring[i]!, ring[i + 1]!];
        return (b.x - a.x) * (c.y - b.y) - (b.y - a.y) * (c.x - b.x);
      });
      expect(changes(curvatures)).toBeLessThanOrEqual(changes(turns) + (closed ? 2 : 0));
    },
  );
});

test("mirrored, turned or moved stations give the mirrored, turned or moved curve", () => {
  fc.assert(
    fc.property(drafts, ({ stations, closed }) => {
      const turned = stations.map((s) => ({ ...s, x: 100 - s.y, y: 7 + s.x }));
      const mirrored = stations.map((s) => ({ ...s, y: -s.y }));
      const [a, b, c] = [stations, turned, mirrored].map((list) => curveOf(list, closed));
      let worst = 0;
      for (const [i, span] of a!.spans.entries()) {
        for (const [piece] of span.steps.entries()) {
          const place = spanAt(span, piece, 0.37);
          const other = spanAt(b!.spans[i]!, piece, 0.37);
          const third = spanAt(c!.spans[i]!, piece, 0.37);
          worst = Math.max(worst, gap(other, { x: 100 - place.y, y: 7 + place.x }));
          worst = Math.max(worst, gap(third, { x: place.x, y: -place.y }));
          worst = Math.max(worst, Math.abs(third.curvature + place.curvature));
        }
      }
      expect(worst).toBeLessThan(1e-9);
    }),
    { seed: 22, numRuns: runs },
  );
});

test("a comb's teeth stand square on the outer side, as long as scale times curvature", () => {
  const curve = curveOf(shapes[2]!.stations, true);
  const teeth = curvatureComb(curve, { step: 5, scale: 1000 })[0]!;
  expect(teeth.length).toBeGreaterThan(200);
  for (const { foot, tip, curvature } of teeth) {
    expect(gap(foot, tip)).toBeCloseTo(1000 * Math.abs(curvature), 6);
  }
  const outermost = teeth.reduce((a, b) => (b.foot.y > a.foot.y ? b : a));
  expect(outermost.tip.y).toBeGreaterThan(outermost.foot.y);
  expect(curvatureComb(curve, { step: 0, scale: 1 })).toEqual([[]]);
});
