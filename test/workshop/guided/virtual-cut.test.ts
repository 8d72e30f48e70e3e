import { readdirSync, readFileSync } from "node:fs";
import { dirname, join, relative, resolve } from "node:path";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { pathLength } from "../../../src/geometry/measure.ts";
import type { Path } from "../../../src/geometry/path.ts";
import { type GuidedEdge, guidedEdge } from "../../../src/workshop/guided/guided-edge.ts";
import { reachedStretches } from "../../../src/workshop/guided/reached-stretches.ts";
import { runLength } from "../../../src/workshop/guided/run-in.ts";
import { virtualCut } from "../../../src/workshop/virtual-cut/virtual-cut.ts";
import { top } from "../../samples.ts";
import { plainCut } from "./plain-cut.ts";
import { wingLike, wingLikes } from "./wing-like.ts";

type Made = NonNullable<ReturnType<typeof wingLike>>;
type Edge = Extract<GuidedEdge, { kind: "ok" }>;

const base = { way: { x: 0, y: -1 }, reach: 120 };
const edgeOf = ({ run }: Made, cutter: number, guide: number) =>
  guidedEdge.work({ run, cutter, guide, length: runLength(guide), base });

function cutOf({ run, outline }: Made, { edge, template, places }: Edge, cutter: number, guide: number) {
  const cut = reachedStretches(run.path, places);
  const joined: Path = { closed: false, points: outline.points.slice(0, 2) };
  return virtualCut.work({ edge, template, guide, cutter, cut, joined: [joined], kept: [] });
}

const wing = wingLike(
  [140, -7],
  [140, 28],
  [
    [130, 44],
    [110, 56],
    [80, 58],
    [50, 38],
    [30, 18],
  ],
  [0, 5],
  4.5,
)!;

describe("the virtual cut", () => {
  it("finds a worked wing brought out within a micrometre, for either sign of the offset and none", () => {
    for (const [cutter, guide] of [
      [19.05, 19.05],
      [100, 80],
      [8, 16],
      [12.68, 8],
    ] as const) {
      const made = edgeOf(wing, cutter, guide);
      if (made.kind !== "ok") throw new Error(made.kind);
      expect(made.places).toEqual([]);
      const cut = cutOf(wing, made, cutter, guide);
      expect(cut).toMatchObject({ kind: "ok", joint: 0 });
      expect(cut.kind === "ok" && cut.deviation).toBeLessThan(1e-4);
    }
  });

  it("holds on random wings outside of the places that are listed, and is as far off in those as they are deep", () => {
    const counted = { all: 0, listed: 0, hollow: 0, outward: 0, inward: 0, none: 0 };
    fc.assert(
      fc.property(wingLikes, ({ cutter, guide, ...one }) => {
        const made = edgeOf(one, cutter, guide);
        counted.all++;
        if (made.kind !== "ok") {
          counted.none++;
          return;
        }
        if (made.places.length > 0) counted.listed++;
        if (made.places.some(({ kind }) => kind === "hollow")) counted.hollow++;
        if (made.places.some(({ kind }) => kind === "outward")) counted.outward++;
        if (made.offset < 0) counted.inward++;
        const cut = cutOf(one, made, cutter, guide);
        if (cut.kind !== "ok") throw new Error(cut.kind);
        expect(cut.deviation).toBeLessThan(0.011);
        // All of the run, with the places: off by what is listed of each kind.
        const whole = virtualCut.work({
          ...{ edge: made.edge, template: made.template, guide, cutter },
          ...{ cut: [one.run.path], joined: [], kept: [] },
        });
        if (whole.kind !== "ok") throw new Error(whole.kind);
        const deepest = (kind: string) =>
          Math.max(
            0,
            ...made.places.filter((place) => place.kind === kind).map(({ depth }) => depth ?? cutter),
          );
        // Where tips are rounded too, the cutter gets a little deeper into the hollow between them.
        const both = deepest("hollow") > 0 && deepest("outward") > 0;
        if (!both) expect(Math.abs(whole.left - deepest("hollow"))).toBeLessThan(0.011);
        expect(whole.left).toBeLessThan(deepest("hollow") + 0.011);
        // What the middle itself passes over counts as the cutter's radius.
        expect(Math.abs(whole.taken - Math.min(cutter / 2, deepest("outward")))).toBeLessThan(0.011);
      }),
      { seed: 20261125, numRuns: process.env.NIGHTLY === undefined ? 80 : 2000 },
    );
    expect(counted.none / counted.all).toBeLessThan(0.3);
    for (const count of [counted.listed, counted.hollow, counted.outward, counted.inward])
      expect(count / counted.all).toBeGreaterThan(0.1);
  });
});

it("says what brute force with plain points says, where something is left and where something is taken", () => {
  const narrow = wingLike(
    [140, -7],
    [140, 28],
    [
      [110, 56],
      [80, 20],
      [50, 50],
    ],
    [0, 14],
    2,
  )!;
  for (const [cutter, guide] of [
    [60, 60],
    [30, 40],
    [100, 80],
  ] as const) {
    const made = edgeOf(narrow, cutter, guide) as Edge;
    expect(made.places.length).toBeGreaterThan(0);
    const cut = virtualCut.work({
      ...{ edge: made.edge, template: made.template, guide, cutter },
      ...{ cut: [narrow.run.path], joined: [], kept: [] },
    });
    const plain = plainCut(made.edge, guide, cutter, [narrow.run.path], 0.5);
    if (cut.kind !== "ok") throw new Error(cut.kind);
    expect(Math.abs(cut.taken - plain.taken)).toBeLessThan(0.05);
    // Its points come upon the two sides of a hollow one after the other, and so a little late: it leaves more, never less.
    expect(plain.left).toBeGreaterThan(cut.left - 0.02);
    expect(plain.left).toBeLessThan(cut.left + 0.6);
  }
});

describe("saboteurs, each found", () => {
  const [cutter, guide] = [100, 80];
  const made = edgeOf(wing, cutter, guide) as Edge;
  const tried = (edge: Path, ride = guide) =>
    virtualCut.work({
      ...{ edge, template: made.template, guide: ride, cutter, cut: [wing.run.path], joined: [], kept: [] },
    });

  it("an offset of the wrong sign", () => {
    const wrong = edgeOf(wing, guide, cutter);
    if (wrong.kind !== "ok") throw new Error(wrong.kind);
    const cut = virtualCut.work({
      ...{ edge: wrong.edge, template: wrong.template, guide, cutter },
      ...{ cut: [wing.run.path], joined: [], kept: [] },
    });
    expect(cut.kind === "ok" && cut.taken).toBeGreaterThan(19.9);
  });

  it("a guide 0.2 larger, and one 0.2 smaller, than written", () => {
    expect(tried(made.edge)).toMatchObject({ kind: "ok", taken: expect.closeTo(0, 3) });
    const larger = tried(made.edge, guide + 0.2);
    expect(larger.kind === "ok" && larger.left).toBeCloseTo(0.1, 3);
    const smaller = tried(made.edge, guide - 0.2);
    expect(smaller.kind === "ok" && smaller.taken).toBeCloseTo(0.1, 3);
  });

  it("a removed run-in is not seen by the cut alone, but a guided edge that is too short by 2 is", () => {
    const short = { closed: false, points: made.edge.points.slice(2) };
    expect(pathLength(short)).toBeLessThan(pathLength(made.edge) - 75);
    const cut = tried(short);
    expect(cut.kind === "ok" && cut.left).toBeGreaterThan(0.5);
  });

  it("a clamp in the cutter's way, one that lies just beyond its margin, and one that takes in all", () => {
    const box = (x: number, y: number, size: number): Path => ({
      closed: true,
      points: [
        [x, y],
        [x + size, y],
        [x + size, y + size],
        [x, y + size],
      ].map(([a, b]) => ({ x: a!, y: b!, bulge: 0 })),
    });
    const cut = virtualCut.work({
      ...{ edge: made.edge, template: made.template, guide, cutter, cut: [wing.run.path], joined: [] },
      kept: [
        { id: "free", path: box(60, -30, 20), margin: 6 },
        { id: "swept", path: box(80, 70, 40), margin: 6 },
        { id: "all", path: box(-2000, -2000, 4000), margin: 6 },
      ],
    });
    const gaps = cut.kind === "ok" ? Object.fromEntries(cut.kept.map(({ id, gap }) => [id, gap])) : {};
    expect(gaps.free).toBeGreaterThan(20);
    expect(gaps.swept).toBeCloseTo(-50, 1);
    expect(gaps.all).toBe(-50);
  });
});

it("imports nothing of the offset, of the outlines cut against each other, or of what made the fixture", () => {
  const src = join(top, "src");
  const reached = new Set<string>();
  const follow = (file: string) => {
    if (reached.has(file)) return;
    reached.add(file);
    for (const [, name] of readFileSync(file, "utf8").matchAll(/(?:import|export)[^;]*?from "(\.[^"]+)"/g))
      follow(resolve(dirname(file), name!));
  };
  const folder = join(src, "workshop", "virtual-cut");
  for (const name of readdirSync(folder)) follow(join(folder, name));
  const names = [...reached].map((file) => relative(src, file));
  expect(names.length).toBeGreaterThan(8);
  const banned = /^geometry\/(offset|arrangement|boolean|access|intersect)\/|^workshop\/guided\/|winding-at/;
  expect(names.filter((name) => banned.test(name))).toEqual([]);
  // The rule itself is tried: the code that makes the edge does reach them.
  follow(join(src, "workshop", "guided", "guided-edge.ts"));
  expect([...reached].filter((file) => banned.test(relative(src, file))).length).toBeGreaterThan(5);
});
