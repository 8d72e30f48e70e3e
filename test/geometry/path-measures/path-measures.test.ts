import fc from "fast-check";
import { expect, test } from "vitest";
import { pathLength, signedArea } from "../../../src/geometry/measure.ts";
import type { Path } from "../../../src/geometry/path.ts";
import { areaMoments } from "../../../src/geometry/path-measures/area-moments.ts";
import { centroid } from "../../../src/geometry/path-measures/centroid.ts";
import { nearestPlace } from "../../../src/geometry/path-measures/nearest-place.ts";
import { placeAlong } from "../../../src/geometry/path-measures/place-along.ts";
import { secondMoments } from "../../../src/geometry/path-measures/second-moments.ts";
import { whereabouts } from "../../../src/geometry/path-measures/winding.ts";
import { runs } from "../random/runs.ts";
import { reversed } from "./moved-paths.ts";
import { flattened, rings } from "./random-ring.ts";

type Place = { x: number; y: number };

/** Moments of a polygon about its own mean vertex by triangles from there: not the way of the code under test. */
function polygonMoments(polygon: readonly Place[]) {
  const o = polygon[0]!;
  let [area, x, y] = [0, 0, 0];
  const triangles: [number, Place, Place, Place][] = [];
  for (let i = 1; i + 1 < polygon.length; i++) {
    const [p, q] = [polygon[i]!, polygon[i + 1]!];
    const t = ((p.x - o.x) * (q.y - o.y) - (q.x - o.x) * (p.y - o.y)) / 2;
    triangles.push([t, o, p, q]);
    area += t;
    x += (t * (o.x + p.x + q.x)) / 3;
    y += (t * (o.y + p.y + q.y)) / 3;
  }
  const c = { x: x / area, y: y / area };
  let [xx, yy, xy] = [0, 0, 0];
  for (const [t, ...corners] of triangles) {
    for (const [i, a] of corners.entries()) {
      const m = corners[(i + 1) % 3]!;
      const [u, v] = [(a.x + m.x) / 2 - c.x, (a.y + m.y) / 2 - c.y];
      xx += (t * u * u) / 3;
      yy += (t * v * v) / 3;
      xy += (t * u * v) / 3;
    }
  }
  return { area, c, xx, yy, xy };
}
const restarted = ({ closed, points }: Path): Path => ({
  closed,
  points: [...points.slice(3), ...points.slice(0, 3)],
});
const movedBy = ({ closed, points }: Path, dx: number, dy: number): Path => ({
  closed,
  points: points.map((p) => ({ ...p, x: p.x + dx, y: p.y + dy })),
});

test("centroid and second moments agree with a fine flattening, and better the finer it is", () => {
  let withArcs = 0;
  fc.assert(
    fc.property(rings, (path) => {
      if (path.points.some((p) => p.bulge !== 0)) withArcs++;
      const exact = secondMoments(path);
      const at = centroid(path);
      const errors = [60, 240].map((pieces) => {
        const flat = polygonMoments(flattened(path, pieces));
        const off = at.kind === "ok" ? Math.hypot(at.point.x - flat.c.x, at.point.y - flat.c.y) : 1;
        const size = exact.xx + exact.yy;
        const second = (key: "xx" | "yy" | "xy") => Math.abs(exact[key] - flat[key]) / size;
        return Math.max(off / 100, second("xx"), second("yy"), second("xy"));
      });
      expect(errors[1]!).toBeLessThan(1e-4);
      expect(errors[1]!).toBeLessThan(errors[0]! / 10 + 1e-10);
    }),
    { seed: 31, numRuns: Math.ceil(runs / 4) },
  );
  expect(withArcs).toBeGreaterThan(runs / 8);
});

test("moments don't depend on start, winding or place", () => {
  fc.assert(
    fc.property(rings, (path) => {
      const at = areaMoments(path);
      expect(Math.abs(at.area - signedArea(path))).toBeLessThan(1e-2);
      const own = secondMoments(path);
      const scale = own.xx + own.yy;
      for (const other of [reversed(path), restarted(path), movedBy(path, 1e4, -3e4)]) {
        const again = secondMoments(other);
        const worst = Math.max(
          ...(["xx", "yy", "xy"] as const).map((key) => Math.abs(again[key] - own[key])),
        );
        expect(worst / scale).toBeLessThan(1e-9);
      }
    }),
    { seed: 32, numRuns: Math.ceil(runs / 4) },
  );
});

test("a circle and a half circle have the moments of the books", () => {
  const circle: Path = {
    closed: true,
    points: [
      { x: 7, y: 0, bulge: 1 },
      { x: -3, y: 0, bulge: 1 },
    ],
  };
  expect(secondMoments(circle).xx).toBeCloseTo((Math.PI * 5 ** 4) / 4, 9);
  expect(centroid(circle)).toMatchObject({ kind: "ok", point: { x: expect.closeTo(2, 12) } });
  const half: Path = {
    closed: true,
    points: [
      { x: 5, y: 0, bulge: 1 },
      { x: -5, y: 0, bulge: 0 },
    ],
  };
  expect(centroid(half)).toMatchObject({ point: { y: expect.closeTo(20 / (3 * Math.PI), 12) } });
  expect(secondMoments(half).yy).toBeCloseTo((Math.PI / 8 - 8 / (9 * Math.PI)) * 625, 9);
  expect(centroid({ closed: true, points: [] })).toEqual({ kind: "no-area" });
});

test("an arc that is all but straight is measured like the line, not from its far centre", () => {
  for (const bulge of [1e-7, 3e-10, -2.6e-14]) {
    const path: Path = {
      closed: true,
      points: [
        { x: 0, y: 0, bulge },
        { x: 40, y: 0, bulge: 0 },
        { x: 40, y: 30, bulge: 0 },
        { x: 0, y: 30, bulge: 0 },
      ],
    };
    expect(secondMoments(path).yy).toBeCloseTo((40 * 30 ** 3) / 12, 1);
    expect(secondMoments(path).xx).toBeCloseTo((30 * 40 ** 3) / 12, 1);
    expect(placeAlong(path, 10)).toMatchObject({
      point: { x: expect.closeTo(10, 9), y: expect.closeTo(0, 5) },
    });
    expect(nearestPlace(path, { x: 10, y: -3 })).toMatchObject({
      distance: expect.closeTo(3, 5),
      along: expect.closeTo(10, 5),
    });
    expect([whereabouts(path, { x: 10, y: 1e-3 }), whereabouts(path, { x: 10, y: -1e-3 })]).toEqual([
      "inside",
      "outside",
    ]);
  }
});

test("a place along the path is as far from the start as asked, and its direction is that of travel", () => {
  fc.assert(
    fc.property(rings, fc.double({ min: -1, max: 2, noNaN: true }), (path, share) => {
      const whole = pathLength(path);
      const [here, on] = [placeAlong(path, share * whole), placeAlong(path, share * whole + 1e-4)];
      if (here.kind !== "ok" || on.kind !== "ok") throw new Error(here.kind);
      const nearest = nearestPlace(path, here.point);
      if (nearest.kind !== "ok") throw new Error(nearest.kind);
      expect(nearest.distance).toBeLessThan(1e-9);
      const around = Math.abs(nearest.along - (share - Math.floor(share)) * whole);
      const crossing = Math.min(around, whole - around) > 1e-6;
      if (here.segment !== on.segment || crossing) return;
      expect(on.point.x - here.point.x).toBeCloseTo(1e-4 * here.direction.x, 7);
      expect(on.point.y - here.point.y).toBeCloseTo(1e-4 * here.direction.y, 7);
    }),
    { seed: 33, numRuns: runs },
  );
});

test("an open path ends where it ends", () => {
  const path: Path = {
    closed: false,
    points: [
      { x: 0, y: 0, bulge: 1 },
      { x: 10, y: 0, bulge: 0 },
    ],
  };
  expect(placeAlong(path, 5 * Math.PI)).toMatchObject({ kind: "ok", point: { x: 10, y: 0 } });
  expect(placeAlong(path, 5 * Math.PI + 1e-3)).toEqual({ kind: "beyond" });
  expect(placeAlong(path, -1e-3)).toEqual({ kind: "beyond" });
  expect(placeAlong(path, Number.NaN)).toEqual({ kind: "beyond" });
  expect(placeAlong({ closed: true, points: [] }, 0)).toEqual({ kind: "empty" });
});

test("no place of a fine flattening is nearer than the nearest place", () => {
  fc.assert(
    fc.property(
      rings,
      fc.integer({ min: -400, max: 400 }),
      fc.integer({ min: -400, max: 400 }),
      (path, x, y) => {
        const found = nearestPlace(path, { x, y });
        if (found.kind !== "ok") throw new Error(found.kind);
        let least = Number.POSITIVE_INFINITY;
        for (const p of flattened(path, 100, true)) least = Math.min(least, Math.hypot(p.x - x, p.y - y));
        expect(found.distance).toBeLessThanOrEqual(least + 1e-9);
        expect(least - found.distance).toBeLessThan(1.5);
      },
    ),
    { seed: 34, numRuns: Math.ceil(runs / 2) },
  );
});
