import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { Path } from "../../../src/geometry/path.ts";
import { leastRadius } from "../../../src/geometry/path-measures/least-radius.ts";
import { nearestPlace } from "../../../src/geometry/path-measures/nearest-place.ts";
import { whereabouts, winding } from "../../../src/geometry/path-measures/winding.ts";
import { runs } from "../random/runs.ts";
import { reversed } from "./moved-paths.ts";
import { flattened, rings } from "./random-ring.ts";

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
