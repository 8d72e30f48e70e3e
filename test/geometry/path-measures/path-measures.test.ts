import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { pathLength, signedArea } from "../../../src/geometry/measure.ts";
import type { Path } from "../../../src/geometry/path.ts";
import { areaMoments } from "../../../src/geometry/path-measures/area-moments.ts";
import { centroid } from "../../../src/geometry/path-measures/centroid.ts";
import { leastRadius } from "../../../src/geometry/path-measures/least-radius.ts";
import { nearestPlace } from "../../../src/geometry/path-measures/nearest-place.ts";
import { placeAlong } from "../../../src/geometry/path-measures/place-along.ts";
import { secondMoments } from "../../../src/geometry/path-measures/second-moments.ts";
import { whereabouts, winding } from "../../../src/geometry/path-measures/winding.ts";
import { runs } from "../random/runs.ts";
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

const reversed = ({ closed, points }: Path): Path => ({
  closed,
  points: points.map(({ x, y }, i) => ({ x, y, bulge: -points.at(i - 1)!.bulge })).reverse(),
});
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

describe("inside or not", () => {
  test("agrees with crossings of a fine flattening, and turns its sign with the winding", () => {
    const seen = { inside: 0, outside: 0, on: 0 };
    fc.assert(
      fc.property(rings, fc.double({ min: -1, max: 1 }), fc.double({ min: -1, max: 1 }), (path, u, v) => {
        if (!Number.isFinite(u) || !Number.isFinite(v)) return;
        const o = path.points[0]!;
        const place = { x: o.x - 60 + 120 * u, y: o.y + 120 * v };
        const found = whereabouts(path, place);
        seen[found]++;
        const near = nearestPlace(path, place);
        if (near.kind === "ok" && near.distance < 0.2) return;
        const turns = winding(path, place);
        expect(found).toBe(turns % 2 === 0 ? "outside" : "inside");
        expect(winding(reversed(path), place)).toBe(-turns || 0);
        const flat = flattened(path, 48);
        let crossings = 0;
        for (const [i, p] of flat.entries()) {
          const q = flat[(i + 1) % flat.length]!;
          if (p.y > place.y === q.y > place.y) continue;
          if (p.x + ((place.y - p.y) / (q.y - p.y)) * (q.x - p.x) > place.x) crossings += q.y > p.y ? 1 : -1;
        }
        expect(turns).toBe(crossings);
      }),
      { seed: 35, numRuns: runs },
    );
    expect(Math.min(seen.inside, seen.outside)).toBeGreaterThan(runs / 10);
  });

  test("on a chord, level with a vertex, at a centre: exact places are told right", () => {
    const lens: Path = {
      closed: true,
      points: [
        { x: -5, y: 0, bulge: 0.5 },
        { x: 5, y: 0, bulge: 0.5 },
      ],
    };
    expect(whereabouts(lens, { x: 0, y: 0 })).toBe("inside");
    expect(winding(lens, { x: 0, y: 0 })).toBe(1);
    expect(winding(reversed(lens), { x: 0, y: 0 })).toBe(-1);
    expect(whereabouts(lens, { x: 6, y: 0 })).toBe("outside");
    expect(whereabouts(lens, { x: -5, y: 0 })).toBe("on");
    expect(whereabouts(lens, { x: 0, y: 2.5 })).toBe("on");
    const circle: Path = {
      closed: true,
      points: [
        { x: 5, y: 0, bulge: 1 },
        { x: -5, y: 0, bulge: 1 },
      ],
    };
    expect(winding(circle, { x: 0, y: 0 })).toBe(1);
    expect(whereabouts(circle, { x: 0, y: 0 })).toBe("inside");
    const bite: Path = {
      closed: true,
      points: [
        { x: 0, y: 0, bulge: 0 },
        { x: 10, y: 0, bulge: 0 },
        { x: 10, y: 10, bulge: -0.8 },
        { x: 0, y: 10, bulge: 0 },
      ],
    };
    expect(whereabouts(bite, { x: 5, y: 7 })).toBe("outside");
    expect(whereabouts(bite, { x: 5, y: 5 })).toBe("inside");
  });
});

describe("the least radius", () => {
  const path: Path = {
    closed: true,
    points: [
      { x: 0, y: 0, bulge: 0 },
      { x: 40, y: 0, bulge: Math.tan(Math.PI / 8) },
      { x: 50, y: 10, bulge: 0 },
      { x: 50, y: 40, bulge: 0 },
      { x: 30, y: 40, bulge: -1 },
      { x: 20, y: 40, bulge: 0 },
      { x: 0, y: 40, bulge: 0 },
    ],
  };

  test("is 0 at a corner, and found to each hand with its place", () => {
    expect(leastRadius(path)).toMatchObject({ kind: "ok", radius: 0, turn: "left" });
    const smooth = { closed: false, points: path.points.slice(0, 4) };
    const found = leastRadius(smooth);
    expect(found).toMatchObject({ kind: "ok", radius: expect.closeTo(10, 9), turn: "left", segment: 1 });
    expect(leastRadius(smooth, "right")).toEqual({ kind: "straight" });
    const bite = { closed: false, points: path.points.slice(3, 7) };
    expect(leastRadius(bite, "right")).toMatchObject({
      radius: expect.closeTo(5, 9),
      at: { y: expect.closeTo(35, 9) },
    });
    expect(leastRadius(bite, "left")).toMatchObject({ radius: 0 });
  });

  test("of lines alone on one line is none", () => {
    const line = { closed: false, points: [0, 1, 5].map((x) => ({ x, y: 0, bulge: 0 })) };
    expect(leastRadius(line)).toEqual({ kind: "straight" });
  });
});

test("beside the line on which a nearly straight arc would run on, a place is on the side that it is on", () => {
  // An arc whose middle stands half a billionth of a micrometre off its chord; its centre is 1e15 mm away.
  const corner = (x: number, y: number, bulge = 0) => ({ x, y, bulge });
  const path: Path = {
    closed: true,
    points: [
      corner(30, 0, 1.414883117388089e-14),
      corner(69.69242462759418, 58.478887800864655),
      corner(5.209445330007912, 29.544232590366242),
      corner(-28, 10),
      corner(5.209445330007899, -29.544232590366242),
      corner(22.981333293569335, -19.283628290596187),
    ],
  };
  expect(whereabouts(path, { x: 29.88245359278266, y: -0.3229560995676586 - 1e-4 })).toBe("outside");
  expect(whereabouts(path, { x: 29.88245359278266, y: -0.3229560995676586 + 1e-4 })).toBe("inside");
});
