import { describe, expect, it } from "vitest";
import { facet } from "../../src/geometry/facet.ts";
import { extentsOf, signedArea } from "../../src/geometry/measure.ts";
import { profileOf } from "../../src/instrument/neck/profile.ts";
import { sectionPath } from "../../src/instrument/neck/section.ts";
import type { Spec } from "../../src/order/spec.ts";
import { memoryStore } from "../../src/step/store.ts";
import { modelOf } from "../../src/workshop/model.ts";
import { forced } from "../forced.ts";
import { everyCount, specOf } from "../samples.ts";

const made = (spec: Spec) => modelOf(spec, memoryStore()).instrument;

/** The distance from a place to a straight piece, mm. */
function toPiece([x, y]: number[], [ax, ay]: number[], [bx, by]: number[]): number {
  const [dx, dy] = [bx! - ax!, by! - ay!];
  const share = Math.min(1, Math.max(0, ((x! - ax!) * dx + (y! - ay!) * dy) / (dx * dx + dy * dy)));
  return Math.hypot(x! - ax! - share * dx, y! - ay! - share * dy);
}

/**
 * The least wood round something sunk, the slow way: every place of its bottom and sides against every chord of the finely
 * faceted section without its top, at places twice as near each other as the program looks.
 */
function slowWood(
  spec: Spec,
  sunk: { y: number; width: number; depth: number; start: number; length: number },
): number {
  const at = profileOf(made(spec).neckProfile);
  let least = Number.POSITIVE_INFINITY;
  const steps = Math.ceil(sunk.length * 2);
  for (let i = 0; i <= steps; i++) {
    const along = (sunk.length * i) / steps;
    const off = Math.max(0, sunk.width / 2 - Math.min(along, sunk.length - along));
    const half = Math.sqrt((sunk.width / 2) ** 2 - off ** 2);
    const ring = facet(sectionPath(at(sunk.start + along).form), 0.002).points.map(({ x, y }) => [x, y]);
    const pieces = ring.map((a, k) => [a, ring[(k + 1) % ring.length]!] as const);
    const walls = pieces.filter(([a, b]) => a[1]! < 0 || b[1]! < 0);
    for (let k = 0; k <= 8; k++) {
      const across = sunk.y - half + (half * k) / 4;
      const deep = (-sunk.depth * k) / 8;
      for (const place of [
        [across, -sunk.depth],
        [sunk.y - half, deep],
        [sunk.y + half, deep],
      ])
        for (const [a, b] of walls) least = Math.min(least, toPiece(place, a, b));
    }
  }
  return least;
}

describe.each(everyCount)("rods and pins of $design with $count strings", ({ design, count }) => {
  const spec = specOf(design, count);
  const of = (id: string) => spec.values[id]!.value;
  const { neckRods, neckPins, neckBlank, neckPlan, neckRodWalls, neckPinWalls } = made(spec);

  it("has as many channels as rods, either side of the centreline, with round ends", () => {
    expect(neckRods.map(({ y }) => y)).toEqual(
      [[], [0], [of("rod.offset"), -of("rod.offset")]][of("rod.count")],
    );
    for (const { y, path } of neckRods) {
      const [width, length, start] = [of("rod.width"), of("rod.length"), of("rod.start")];
      expect(signedArea(path)).toBeCloseTo((length - width) * width + (Math.PI * width * width) / 4, 9);
      const { minX, maxX, minY, maxY } = extentsOf([path])!;
      for (const [found, wanted] of [
        ...[
          [minX, start],
          [maxX, start + length],
        ],
        ...[
          [minY, y - width / 2],
          [maxY, y + width / 2],
        ],
      ]) {
        expect(found).toBeCloseTo(wanted!, 9);
      }
    }
  });

  it("has two pins in the middle of the blank's waste and two under the board, of unequal sizes", () => {
    if (neckPlan.kind !== "ok") throw new Error(neckPlan.kind);
    const { minX, maxX } = extentsOf([neckPlan.path])!;
    const [head, tail, upper, lower] = neckPins;
    expect(neckPins.map(({ id }) => id)).toEqual(["head", "tail", "upper", "lower"]);
    expect(head).toMatchObject({ y: 0, depth: "through" });
    expect(tail).toMatchObject({ y: 0, depth: "through" });
    expect(head!.x).toBeCloseTo(minX - of("neck.allowance.end") / 2, 5);
    expect(tail!.x).toBeCloseTo(maxX + of("neck.allowance.end") / 2, 5);
    expect(tail!.x - head!.x).toBeLessThan(neckBlank.length - (head!.diameter + tail!.diameter) / 2);
    expect(Math.abs(head!.diameter - tail!.diameter)).toBeGreaterThanOrEqual(0.5);
    expect(Math.abs(upper!.diameter - lower!.diameter)).toBeGreaterThanOrEqual(0.5);
    for (const { x, diameter } of [upper!, lower!]) {
      expect(x - diameter / 2).toBeGreaterThan(0);
      expect(x + diameter / 2).toBeLessThan(of("fingerboard.length"));
    }
  });

  it("measures the wood under and beside channels and pins as the slow way does", () => {
    const round = neckRodWalls.find(({ between }) => between.includes("back or side"));
    expect(round === undefined).toBe(of("rod.count") === 0);
    if (round !== undefined) {
      expect(Math.abs(round.left - slowWood(spec, neckRods[0]!))).toBeLessThan(0.02);
    }
    for (const { id, x, y, diameter, depth } of neckPins.slice(2)) {
      const wall = neckPinWalls.find(
        ({ between }) => between === `the ${id} pin and the neck's back or side`,
      )!;
      const sunk = { y, width: diameter, depth: Number(depth), start: x - diameter / 2, length: diameter };
      expect(Math.abs(wall.left - slowWood(spec, sunk))).toBeLessThan(0.02);
    }
  });
});

describe("the wood round rods and pins", () => {
  const spec = specOf("thrift", 7);

  it("follows the hand of plain sums where a pin stands beside a channel, past one, and in one", () => {
    const wallOf = (values: Record<string, number>) =>
      made(forced(spec, values))
        .neckPinWalls.filter(({ between }) => between.includes("upper pin and a rod"))
        .map(({ left }) => left);
    const [treble, bass] = wallOf({ "pin.upper.offset": 0.5 });
    expect([treble, bass]).toEqual([expect.closeTo(7 - 2 - 3 - 0.5, 9), expect.closeTo(7 - 2 - 3 + 0.5, 9)]);
    const past = wallOf({ "pin.upper.at": 170, "pin.upper.offset": 7 })[0];
    expect(past).toBeCloseTo(170 - 158 - 3, 9);
    expect(wallOf({ "pin.upper.offset": 7 })[0]).toBeCloseTo(-2 - 3, 9);
  });

  it("grows with nothing that takes wood away", () => {
    const left = (values: Record<string, number>) =>
      Math.min(...made(forced(spec, values)).neckRodWalls.map((wall) => wall.left));
    for (const [id, values] of [
      ["rod.depth", [3, 4, 5, 6, 8, 12]],
      ["rod.offset", [7, 8, 9, 10, 11, 12]],
    ] as const) {
      const woods = values.map((value) => left({ [id]: value }));
      expect(woods, id).toEqual([...woods].sort((a, b) => b - a));
      expect(woods[0]! - woods.at(-1)!, id).toBeGreaterThan(1);
    }
    expect(left({ "rod.depth": 12 })).toBeLessThan(0);
  });
});
