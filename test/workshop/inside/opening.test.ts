import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { circle } from "../../../src/geometry/circle.ts";
import type { Path } from "../../../src/geometry/path.ts";
import { reversedPath } from "../../../src/geometry/reversed-path.ts";
import { laid, relievedBox, roundedBox } from "../../../src/instrument/recess/outlines.ts";
import { reachedStretches } from "../../../src/workshop/guided/reached-stretches.ts";
import { type GuidedOpening, guidedOpening } from "../../../src/workshop/inside/guided-opening.ts";
import { openingFeed } from "../../../src/workshop/inside/opening-feed.ts";
import { virtualCut } from "../../../src/workshop/virtual-cut/virtual-cut.ts";
import { areaOf } from "../../geometry/random/area.ts";
import { contains } from "../../geometry/random/contains.ts";
import { distanceTo } from "../../geometry/random/distance.ts";
import { plainCut } from "../guided/plain-cut.ts";
import { nearlyStraight } from "./nearly-straight.ts";
import { openingLikes } from "./opening-like.ts";

type Ok = Extract<GuidedOpening, { kind: "ok" }>;
const open = (recess: Path, cutter: number, guide: number, first: number | null = null): Ok => {
  const made = guidedOpening.work({ recess, cutter, guide, first });
  if (made.kind !== "ok") throw new Error(made.kind);
  return made;
};
const cutOf = ({ edge, run, places }: Ok, cutter: number, guide: number, own = edge) => {
  const cut = virtualCut.work({
    ...{ edge: own, template: own, guide, cutter, joined: [], kept: [] },
    cut: reachedStretches(run.path, places),
  });
  if (cut.kind !== "ok") throw new Error(cut.kind);
  return cut;
};
const radii = ({ points }: Path) =>
  points.map((from, i) => {
    const to = points[(i + 1) % points.length]!;
    const sweep = 4 * Math.atan(from.bulge);
    return sweep === 0 ? 0 : Math.hypot(to.x - from.x, to.y - from.y) / (2 * Math.abs(Math.sin(sweep / 2)));
  });

describe("an opening's guided edge, as the trade has it", () => {
  it.each([
    ["bush 16, bit 8: 4 larger all round", 8, 16, 24],
    ["bearing as large as its bit: the recess itself", 12.68, 12.68, 20],
    ["pin 12, cutter 20: 4 smaller all round", 20, 12, 16],
  ])("%s", (_, cutter, guide, radius) => {
    const { edge, offset, places } = open(circle({ x: 5, y: -3 }, 20), cutter, guide);
    expect(offset).toBe((cutter - guide) / 2);
    expect(places).toEqual([]);
    expect(edge.closed).toBe(true);
    for (const found of radii(edge)) expect(found).toBeCloseTo(radius, 6);
    // Clockwise, so that the template lies on its left.
    expect(areaOf([edge])).toBeCloseTo(-Math.PI * radius ** 2, 4);
  });

  it("keeps arcs as arcs: a corner of 6 becomes one of 10 under bush 16 and bit 8, and its sides stay lines", () => {
    const { edge } = open(roundedBox(50, 30, 6), 8, 16);
    const round = radii(edge).filter((radius) => radius > 0);
    expect(round).toHaveLength(4);
    for (const radius of round) expect(radius).toBeCloseTo(10, 6);
    expect(edge.points.length).toBeLessThanOrEqual(9);
  });

  it("lists a corner tighter than its cutter, and a slot that is just as wide, which has no play", () => {
    expect(open(roundedBox(50, 30, 3), 8, 16).places.map(({ kind }) => kind)).toEqual(
      Array(4).fill("hollow"),
    );
    const slot = open(roundedBox(24, 8, 4), 8, 16);
    expect(slot.plunge.room).toBeCloseTo(0, 6);
    expect(open(roundedBox(24, 8, 4), 6.35, 10).plunge.room).toBeCloseTo(0.825, 6);
  });

  it("lists every corner of an outline with a side that is nearly straight", () => {
    const { places } = open(nearlyStraight, 6.35, 10);
    expect(places.filter(({ kind }) => kind === "hollow")).toHaveLength(4);
  });

  it("rounds the corners beside reliefs as a circle of the offset's radius rolls there, and lists them", () => {
    const { places } = open(relievedBox(50, 30, 3.2)!, 6.35, 16);
    expect(places).toHaveLength(8);
    for (const { kind, depth } of places) {
      expect(kind).toBe("outward");
      // A circle of 4.825 in the wood, between the side and the half circle of 3.2: worked out by hand.
      expect(depth).toBeCloseTo(0.228, 3);
    }
  });

  it("says whether a first guide has room, and that nothing is left for one too large", () => {
    expect(open(roundedBox(24, 8, 4), 6.35, 10, 12).firstFits).toBe(false);
    expect(open(roundedBox(24, 12, 4), 6.35, 10, 12).firstFits).toBe(true);
    expect(
      guidedOpening.work({ recess: circle({ x: 0, y: 0 }, 5), cutter: 24, guide: 8, first: null }),
    ).toMatchObject({
      kind: "no-edge",
    });
  });
});

describe("the feed in an opening, as the trade has it", () => {
  const { edge } = open(circle({ x: 0, y: 0 }, 20), 8, 16);
  it.each([
    ["a hand-held router goes clockwise and is pushed that way", "cw", "tool", true],
    ["an overhead router goes clockwise and is pushed that way", "cw", "tool", true],
    ["a table router's bit goes counter-clockwise while the work is pushed", "ccw", "work", false],
  ] as const)("%s", (_, rotation, moves, clockwise) => {
    const { tool, way } = openingFeed(edge, { rotation, moves }, 8);
    expect(tool.length).toBeGreaterThanOrEqual(2);
    for (const { at, way: arrow } of tool) {
      expect(Math.hypot(at.x, at.y)).toBeCloseTo(16, 6);
      expect(at.x * arrow.y - at.y * arrow.x < 0).toBe(clockwise);
    }
    // The edge itself is walked clockwise.
    expect(way).toBe(clockwise ? "along" : "back");
  });
});

describe("the virtual cut of a closed edge", () => {
  it("says what brute force with plain points says", () => {
    for (const [recess, cutter, guide] of [
      [roundedBox(50, 30, 6), 8, 16],
      [laid(roundedBox(40, 30, 2), 30, { x: 3, y: 4 }), 12.68, 8],
      [relievedBox(50, 30, 3.2)!, 6.35, 16],
    ] as const) {
      const { edge, run } = open(recess, cutter, guide);
      const cut = virtualCut.work({
        ...{ edge, template: edge, guide, cutter, cut: [run.path], joined: [], kept: [] },
      });
      if (cut.kind !== "ok") throw new Error(cut.kind);
      const plain = plainCut(edge, guide, cutter, [run.path], 0.3);
      expect(Math.abs(cut.taken - plain.taken)).toBeLessThan(0.03);
      // Its points come upon the two sides of a hollow one after the other, and so a little late: it leaves more, never less.
      expect(plain.left).toBeGreaterThan(cut.left - 0.02);
      expect(plain.left).toBeLessThan(cut.left + 0.2);
    }
  });

  it("finds each saboteur: the wrong sign, a guide 0.2 larger, a guide 0.2 smaller, an edge moved by 0.02", () => {
    const [cutter, guide] = [8, 16];
    const made = open(roundedBox(50, 30, 6), cutter, guide);
    expect(cutOf(made, cutter, guide).deviation).toBeLessThan(1e-4);
    const wrong = open(roundedBox(50, 30, 9), guide, cutter);
    expect(cutOf(made, cutter, guide, wrong.edge).left).toBeGreaterThan(7.9);
    expect(cutOf(made, cutter, guide + 0.2).left).toBeCloseTo(0.1, 3);
    expect(cutOf(made, cutter, guide - 0.2).taken).toBeCloseTo(0.1, 3);
    const moved = { ...made.edge, points: made.edge.points.map((at) => ({ ...at, x: at.x + 0.02 })) };
    expect(cutOf(made, cutter, guide, moved).deviation).toBeCloseTo(0.02, 3);
    // Walked the other way round the template would be the part that falls out.
    expect(cutOf(made, cutter, guide, reversedPath(made.edge)).left).toBeGreaterThan(7.9);
  });

  it("never counts a guide free that stands wholly in the template beyond a narrow place", () => {
    const [cutter, guide] = [16, 8];
    expect(cutOf(open(relievedBox(17, 24, 4)!, cutter, guide), cutter, guide).deviation).toBeLessThan(0.011);
  });

  it("holds on random recesses outside of the places that are listed, and no free place of the guide lets the cutter touch what is kept", () => {
    const counted = {
      all: 0,
      hollow: 0,
      outward: 0,
      inside: 0,
      larger: 0,
      smaller: 0,
      none: 0,
      freed: 0,
      waved: 0,
    };
    fc.assert(
      fc.property(
        openingLikes,
        fc.array(
          fc.tuple(fc.double({ min: 0, max: 1, noNaN: true }), fc.double({ min: 0, max: 1, noNaN: true })),
          { minLength: 40, maxLength: 40 },
        ),
        ({ recess, cutter, guide, shape }, tries) => {
          counted.all++;
          const made = guidedOpening.work({ recess, cutter, guide, first: null });
          if (shape !== "box") counted[shape]++;
          if (made.kind !== "ok") {
            counted.none++;
            return;
          }
          const { edge, places, offset } = made;
          if (places.some(({ kind }) => kind === "hollow")) counted.hollow++;
          if (places.some(({ kind }) => kind === "outward")) counted.outward++;
          if (places.length === 0) counted.inside++;
          if (offset < 0) counted.larger++;
          if (offset > 0) counted.smaller++;
          if (made.plunge.room < 0) {
            // The guide has no room at all, and the plunge says so.
            counted.none++;
            return;
          }
          expect(cutOf(made, cutter, guide).deviation).toBeLessThan(0.011);
          // Arcs stay arcs: the edge is |d| from the recess at its points and at the middles of its pieces.
          for (const { x, y } of edge.points)
            expect(distanceTo([recess], x, y)).toBeCloseTo(Math.abs(offset), 5);
          const rounded = Math.max(
            0,
            ...places.map(({ kind, depth }) => (kind === "outward" ? (depth ?? guide) : 0)),
          );
          const xs = edge.points.map(({ x }) => x);
          const ys = edge.points.map(({ y }) => y);
          const [x1, x2, y1, y2] = [Math.min(...xs), Math.max(...xs), Math.min(...ys), Math.max(...ys)];
          for (const [a, b] of tries) {
            const [x, y] = [x1 + (x2 - x1) * a, y1 + (y2 - y1) * b];
            const guideFree = contains([edge], x, y) && distanceTo([edge], x, y) >= guide / 2;
            if (!guideFree) continue;
            const room = contains([recess], x, y) ? distanceTo([recess], x, y) : -distanceTo([recess], x, y);
            expect(room).toBeGreaterThan(cutter / 2 - rounded - 1e-4);
          }
        },
      ),
      { seed: 20261129, numRuns: process.env.NIGHTLY === undefined ? 120 : 3000 },
    );
    for (const [what, count] of Object.entries(counted))
      expect(count / counted.all, what).toBeGreaterThan(what === "none" ? 0 : 0.1);
    expect(counted.none / counted.all).toBeLessThan(0.5);
  });
});
