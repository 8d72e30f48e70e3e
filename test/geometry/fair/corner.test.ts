import { describe, expect, test } from "vitest";
import { fairPath } from "../../../src/geometry/fair/fair-path.ts";
import type { Station } from "../../../src/geometry/fair/station.ts";
import { greatestKink } from "./distance.ts";
import { curveOf, made } from "./made.ts";

describe("a corner", () => {
  const square: Station[] = [
    { x: 0, y: 0, corner: 10 },
    { x: 20, y: 0, corner: 10 },
    { x: 20, y: 20, corner: 10 },
    { x: 0, y: 20, corner: 10 },
  ];

  test("between lines with a radius of half the side gives the four quarters of a circle", () => {
    const fit = made(fairPath(curveOf(square, true)));
    expect(fit.arcs).toBe(4);
    for (const { x, y, bulge } of fit.path.points) {
      expect(Math.hypot(x - 10, y - 10)).toBeCloseTo(10, 9);
      expect(bulge).toBeCloseTo(Math.tan(Math.PI / 8), 9);
    }
  });

  test("with a radius too large by 0.001 has no room", () => {
    const tight = square.map((s) => ({ ...s, corner: 10.001 }));
    expect(fairPath(curveOf(tight, true))).toEqual({ kind: "no-room", corner: 1 });
  });

  test("of a drop, one span closing on itself, is rounded", () => {
    const drop: Station[] = [
      { x: 0, y: 0, corner: 5, leave: 30, arrive: 150 },
      { x: 60, y: 25, id: "a" },
      { x: 85, y: 0 },
      { x: 60, y: -25 },
    ];
    const mirrored: Station[] = [{ ...drop[0]!, leave: 30, arrive: 150 }, drop[1]!, drop[2]!, drop[3]!];
    const fit = made(fairPath(curveOf(mirrored, true)));
    expect(fit.path.closed).toBe(true);
    expect(greatestKink(fit.path)).toBeLessThan(1e-6);
    expect(fit.stations.map((s) => s.id)).toEqual(["a"]);
  });

  test("named and rounded is passed by, and said to be", () => {
    const named = square.map((s, i) => ({ ...s, id: `c${i}` }));
    const fit = made(fairPath(curveOf(named, true)));
    expect([...fit.passed].sort()).toEqual(["c0", "c1", "c2", "c3"]);
    expect(fit.stations).toEqual([]);
  });

  test("of 0 stays sharp, and lines to it stay lines", () => {
    const sharp = square.map((s) => ({ ...s, corner: 0 }));
    const fit = made(fairPath(curveOf(sharp, true)));
    expect(fit.path.points.map(({ x, y, bulge }) => [x, y, bulge])).toEqual([
      [0, 0, 0],
      [20, 0, 0],
      [20, 20, 0],
      [0, 20, 0],
    ]);
  });
});
