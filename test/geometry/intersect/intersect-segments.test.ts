import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { intersectSegments } from "../../../src/geometry/intersect/intersect-segments.ts";
import { segmentBetween } from "../../../src/geometry/segment.ts";
import { distanceTo } from "../random/distance.ts";
import { along } from "../random/flat.ts";
import { runs, seed } from "../random/runs.ts";

type Given = { a: [number, number]; b: [number, number]; bulge: number };

const coordinate = fc.oneof(fc.integer({ min: -10, max: 10 }), fc.double({ min: -10, max: 10, noNaN: true }));
const given = fc
  .record({
    a: fc.tuple(coordinate, coordinate),
    b: fc.tuple(coordinate, coordinate),
    bulge: fc.oneof(
      fc.constant(0),
      fc.constantFrom(1, -1, Math.SQRT2 - 1),
      fc.integer({ min: -700, max: 700 }).map((n) => (n + 300 * Math.sign(n)) / 1000),
    ),
  })
  .filter(({ a, b }) => Math.hypot(a[0] - b[0], a[1] - b[1]) > 8);

/** Two segments, half of them side by side with different curves, so that they often cross twice. */
const pair = fc.oneof(
  fc.tuple(given, given),
  fc
    .tuple(given, given, fc.tuple(coordinate, coordinate), fc.tuple(coordinate, coordinate))
    .map(([p, q, near, far]): [Given, Given] => {
      const a: [number, number] = [p.a[0] + near[0] / 4, p.a[1] + near[1] / 4];
      const b: [number, number] = [p.b[0] + far[0] / 4, p.b[1] + far[1] / 4];
      return [p, { a, b, bulge: q.bulge }];
    }),
);

const segment = ({ a, b, bulge }: Given) => segmentBetween({ x: a[0], y: a[1] }, { x: b[0], y: b[1] }, bulge);
const asPath = ({ a, b, bulge }: Given) => ({
  closed: false,
  points: [
    { x: a[0], y: a[1], bulge },
    { x: b[0], y: b[1], bulge: 0 },
  ],
});

/** How often flattened segments cross, ends not counted. */
function crossings(p: Given, q: Given): number {
  const places = ({ a, b, bulge }: Given) => along({ x: a[0], y: a[1] }, { x: b[0], y: b[1] }, bulge, 0.0002);
  const [one, other] = [places(p), places(q)];
  let count = 0;
  for (let i = 0; i + 1 < one.length; i++) {
    for (let j = 0; j + 1 < other.length; j++) {
      const [a, b, c, d] = [one[i]!, one[i + 1]!, other[j]!, other[j + 1]!];
      const side = (u: readonly number[], v: readonly number[], w: readonly number[]) =>
        (v[0]! - u[0]!) * (w[1]! - u[1]!) - (v[1]! - u[1]!) * (w[0]! - u[0]!);
      if (side(a, b, c) * side(a, b, d) < 0 && side(c, d, a) * side(c, d, b) < 0) count++;
    }
  }
  return count;
}

describe("random segments", () => {
  test("meet on both, as often as their flattenings cross", () => {
    const seen: Record<string, number> = {};
    fc.assert(
      fc.property(pair, ([p, q]) => {
        const found = intersectSegments(segment(p), segment(q));
        seen[found.outcome] = (seen[found.outcome] ?? 0) + 1;
        const places =
          found.outcome === "one" || found.outcome === "tangent"
            ? [found.at]
            : found.outcome === "two"
              ? found.at
              : [];
        for (const { x, y } of places) {
          expect(distanceTo([asPath(p)], x, y)).toBeLessThan(1e-7);
          expect(distanceTo([asPath(q)], x, y)).toBeLessThan(1e-7);
        }
        // Where a crossing is within the chord error of an end or of a touch, a flattening cannot tell.
        const ends = [p.a, p.b].map(([x, y]) => distanceTo([asPath(q)], x, y));
        ends.push(...[q.a, q.b].map(([x, y]) => distanceTo([asPath(p)], x, y)));
        const [first, second] = places;
        const close = second !== undefined && Math.hypot(first!.x - second.x, first!.y - second.y) < 0.2;
        if (Math.min(...ends) < 0.001 || close || found.outcome === "tangent") return;
        expect(crossings(p, q)).toBe(places.length);
      }),
      { seed, numRuns: runs },
    );
    for (const outcome of ["none", "one", "two"])
      expect(seen[outcome]! / runs, outcome).toBeGreaterThanOrEqual(0.1);
  });

  test("meet alike in either order and either way round", () => {
    fc.assert(
      fc.property(pair, ([p, q]) => {
        const turned = (g: Given): Given => ({ a: g.b, b: g.a, bulge: -g.bulge });
        const { outcome } = intersectSegments(segment(p), segment(q));
        expect(intersectSegments(segment(q), segment(p)).outcome).toBe(outcome);
        expect(intersectSegments(segment(turned(p)), segment(q)).outcome).toBe(outcome);
        expect(intersectSegments(segment(turned(p)), segment(turned(q))).outcome).toBe(outcome);
      }),
      { seed, numRuns: runs },
    );
  });
});

describe("segments that meet exactly", () => {
  const of = (ax: number, ay: number, bx: number, by: number, bulge = 0) =>
    segmentBetween({ x: ax, y: ay }, { x: bx, y: by }, bulge);
  const top = of(10, 0, -10, 0, 1);
  test.each([
    ["a line across a half circle", of(-20, 5, 20, 5), top, "two"],
    ["a line that touches it", of(-20, 10, 20, 10), top, "tangent"],
    ["a line that ends where it touches", of(-20, 10, 0, 10), top, "tangent"],
    ["a line a little off", of(-20, 10.001, 20, 10.001), top, "none"],
    ["a line along its diameter", of(-20, 0, 20, 0), top, "two"],
    ["a line that ends on it", of(0, 10, 0, 20), top, "one"],
    ["a circle that touches from outside", of(10, 20, -10, 20, -1), top, "tangent"],
    ["a circle that touches from inside", of(5, 5, -5, 5, 1), top, "tangent"],
    ["a circle round the same centre", of(5, 0, -5, 0, 1), top, "none"],
    ["the same arc", of(10, 0, -10, 0, 1), top, "overlapping"],
    ["the same arc backwards", of(-10, 0, 10, 0, -1), top, "overlapping"],
    ["the other half of the circle", of(-10, 0, 10, 0, 1), top, "two"],
    ["a quarter of it", of(10, 0, 0, 10, Math.SQRT2 - 1), top, "overlapping"],
    ["a part that goes on beyond", of(0, 10, 0, -10, 1), top, "overlapping"],
    ["lines end to end", of(0, 0, 5, 0), of(5, 0, 9, 0), "one"],
    ["lines on one another", of(0, 0, 5, 0), of(9, 0, 3, 0), "overlapping"],
    ["parallel lines", of(0, 0, 5, 0), of(0, 1, 5, 1), "none"],
    ["lines on one line apart", of(0, 0, 5, 0), of(6, 0, 9, 0), "none"],
    ["a tee", of(0, 0, 10, 0), of(4, 0, 4, 7), "one"],
    ["tangent neighbours", of(-20, 10, 0, 10), of(0, 10, 10, 0, 1 - Math.SQRT2), "tangent"],
    ["nothing", of(1, 1, 1, 1), of(0, 0, 2, 2), "none"],
  ])("%s", (_, a, b, outcome) => {
    expect(intersectSegments(a, b).outcome).toBe(outcome);
    expect(intersectSegments(b, a).outcome).toBe(outcome);
  });
  test("an overlap is told from where to where", () => {
    expect(intersectSegments(of(0, 0, 5, 0), of(9, 0, 3, 0))).toEqual({
      outcome: "overlapping",
      from: { x: 3, y: 0 },
      to: { x: 5, y: 0 },
    });
  });
});
